import cron from 'node-cron';
import { type Log, problemOf } from '../db/index.ts';
import type { Engine } from './engine.ts';

/**
 * Calls the engine's tick each minute until stopped, then `after`. A tick still running is not overtaken. The zone only says
 * how the minutes are counted; school days and times are each class's own.
 */
export function startCron(engine: Engine, log: Log, after: () => void): { stop(): Promise<void> } {
  const task = cron.schedule(
    '* * * * *',
    async () => {
      try {
        const report = await engine.tick();
        if (Object.values(report).some((count) => count > 0)) log.info({ ...report }, 'tick');
      } catch (error) {
        log.error({ problem: problemOf(error) }, 'tick_failed');
      } finally {
        after();
      }
    },
    { noOverlap: true, timezone: 'UTC' },
  );
  return { stop: async () => task.destroy() };
}
