import { problemOf } from '../db/index.ts';
import { deliver } from './deliver.ts';
import type { EngineDeps } from './ports.ts';
import { recover } from './sweep.ts';
import { type TickReport, tick } from './tick.ts';

/** The clock and the sender of one process. */
export interface Engine {
  /** Plans what is due now. */
  tick(): Promise<TickReport>;
  /** Sends everything that is waiting now; for scripts and tests. Returns how many jobs that were. */
  drain(): Promise<number>;
  /** Takes up what an earlier process left behind and keeps sending until the store closes. */
  start(): Promise<void>;
}

/** Puts planners, ledger and courier together. */
export function createEngine(deps: EngineDeps): Engine {
  const handler = async (ledgerId: string) => {
    try {
      await deliver(deps, ledgerId);
    } catch (error) {
      // The engine retries the job and keeps it as a dead letter in the end.
      deps.log.error({ ledgerId, problem: problemOf(error) }, 'delivery_crashed');
      throw error;
    }
  };
  return {
    tick: () => tick(deps),
    drain: () => deps.store.queue.drain(handler, deps.lanes),
    start: async () => {
      await recover(deps);
      await deps.store.queue.work(handler, deps.lanes);
    },
  };
}
