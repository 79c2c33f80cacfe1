import cron from 'node-cron';
import type { Engine } from './engine.ts';
import type { Log } from './ports.ts';
import { problemOf } from './tick.ts';

/** Calls the engine's tick each minute until stopped. A tick still running is not overtaken. */
export function startCron(engine: Engine, log: Log): { stop(): Promise<void> } {
  const task = cron.schedule(
    '* * * * *',
    async () => {
      try {
        const report = await engine.tick();
        if (Object.values(report).some((count) => count > 0)) log.info({ ...report }, 'tick');
      } catch (error) {
        log.error({ problem: problemOf(error) }, 'tick_failed');
      }
    },
    { noOverlap: true, timezone: 'UTC' },
  );
  return { stop: async () => task.destroy() };
}
