import type { Clock, Courier, Log, Store } from '../db/index.ts';

/** Real time, for the rate at which messages leave: moving the school's clock does not make the network faster. */
export interface Pace extends Clock {
  /** Ends after this long, or once the signal says so. */
  sleep(milliseconds: number, signal?: AbortSignal): Promise<void>;
}

/** What the planners need. */
export interface PlanDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
}

/** What the engine needs. `lanes` is how many messages may be in flight at a time. */
export interface EngineDeps extends PlanDeps {
  readonly pace: Pace;
  readonly courier: Courier;
  readonly botId: number;
  readonly lanes: number;
}
