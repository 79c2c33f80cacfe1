import cron from 'node-cron';
import { type Log, problemOf, type Store } from '../db/index.ts';
import type { TickReport } from './tick.ts';

/** What the clock's work needs. `looked` is called after each look, whatever came of it. */
export interface CronDeps {
  readonly store: Store;
  readonly log: Log;
  readonly looked?: () => void;
}

/**
 * Calls `tick` each minute until stopped, in the one process of all that leads the planning. A tick still running is not
 * overtaken. The zone only says how the minutes are counted; school days and times are each class's own.
 */
export function startCron(
  deps: CronDeps,
  tick: () => Promise<TickReport>,
): { stop(): Promise<void> } {
  const task = cron.schedule('* * * * *', () => tickOnce(deps, tick), {
    ...{ noOverlap: true, timezone: 'UTC' },
  });
  return { stop: async () => task.destroy() };
}

/** One tick, if this process leads. What goes wrong is logged: the next minute is the next try. */
export async function tickOnce(
  { store, log, looked }: CronDeps,
  tick: () => Promise<TickReport>,
): Promise<void> {
  try {
    if (!(await store.peers.leads('plan'))) return;
    const report = await tick();
    if (Object.values(report).some((count) => count > 0)) log.info({ ...report }, 'tick');
  } catch (error) {
    log.error({ problem: problemOf(error) }, 'tick_failed');
  } finally {
    looked?.();
  }
}
