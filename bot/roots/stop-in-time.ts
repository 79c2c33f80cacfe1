import type { Pace } from '../../db/index.ts';

/** Whoever stops a program gives it ten seconds before it is killed: this leaves the end itself one, on a busy machine. */
export const LONGEST_STOP_MS = 9_000;

/**
 * Ends in order, but not for longer than there is time. What is cut short is safe: an update that was being handled lies in the
 * inbox and is handled again, a message whose call was under way is `unknown`, and every lock ends with its connection. Returns
 * whether everything ended by itself.
 */
export async function stopInTime(
  stop: () => Promise<void>,
  pace: Pick<Pace, 'sleep'>,
): Promise<boolean> {
  const stopped = new AbortController();
  try {
    return await Promise.race([
      stop().then(() => true),
      pace.sleep(LONGEST_STOP_MS, stopped.signal).then(() => false),
    ]);
  } finally {
    stopped.abort();
  }
}
