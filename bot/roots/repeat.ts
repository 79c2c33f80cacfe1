import type { Pace } from '../../db/index.ts';

/** Does something again and again until the signal, waiting first. */
export async function repeat(
  pace: Pace,
  everyMs: number,
  signal: AbortSignal,
  work: () => void,
): Promise<void> {
  while (!signal.aborted) {
    await pace.sleep(everyMs, signal);
    if (!signal.aborted) work();
  }
}
