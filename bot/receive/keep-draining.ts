import { problemOf } from '../../db/index.ts';
import { drainInbox, type InboxDeps } from './inbox.ts';

/** The inbox worker of a running bot. */
export interface InboxLoop {
  /** There may be something to handle. */
  wake(): void;
  /** Waits for nothing any more; resolves once what is being handled has ended. */
  stop(): Promise<void>;
}

/**
 * Drains the inbox when woken, never twice at a time (a call during a run makes it run once more), and by itself when the next
 * try of a failed update is due. `sleep` ends early when its signal says so.
 */
export function keepDraining(
  deps: InboxDeps & { sleep(milliseconds: number, signal: AbortSignal): Promise<void> },
): InboxLoop {
  const stopping = new AbortController();
  let alarm = new AbortController();
  let current: Promise<void> | null = null;
  let again = false;
  let bell = createBell();
  const run = async () => {
    alarm.abort();
    let nextAt: Date | null = null;
    do {
      again = false;
      try {
        const meanwhile = { news: () => bell.rung, stopping: stopping.signal };
        ({ nextAt } = await drainInbox(deps, meanwhile));
      } catch (error) {
        deps.log.error({ problem: problemOf(error) }, 'inbox_failed');
      }
    } while (again);
    current = null;
    if (nextAt && !stopping.signal.aborted) void wakeAt(nextAt);
  };
  const wakeAt = async (instant: Date) => {
    alarm = new AbortController();
    const { signal } = alarm;
    const wait = instant.getTime() - deps.clock.now().getTime();
    await deps.sleep(Math.max(0, wait), signal);
    if (!signal.aborted) wake();
  };
  const wake = () => {
    if (stopping.signal.aborted) return;
    if (!current) {
      current = run();
      return;
    }
    again = true;
    bell.ring();
    bell = createBell();
  };
  return {
    wake,
    stop: async () => {
      stopping.abort();
      alarm.abort();
      await current;
    },
  };
}

/** Rings once. */
function createBell(): { readonly rung: Promise<void>; ring(): void } {
  let ring = () => {};
  const rung = new Promise<void>((resolve) => {
    ring = resolve;
  });
  return { rung, ring };
}
