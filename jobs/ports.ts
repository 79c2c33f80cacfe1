import type { Clock, Courier, Log, Pace, Store, Turnstile } from '../db/index.ts';

/** What the planners need. */
export interface PlanDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
}

/** What the sender of one bot needs. `lanes` is how many messages may be in flight at a time. */
export interface SendDeps extends PlanDeps {
  readonly pace: Pace;
  readonly courier: Courier;
  readonly botId: number;
  readonly turnstile: Turnstile;
  readonly lanes: number;
}
