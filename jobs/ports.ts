import type { Clock, Courier, Log, Meter, Pace, Store, Turnstile } from '../db/index.ts';

/** What the planners need. */
export interface PlanDeps {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
}

/** What a planner did in a class: messages owed, and when it has to look again if that is not by the clock alone. */
export interface Planned {
  readonly owed: number;
  readonly again: Date | null;
}

/** Nothing was owed, and nothing is expected. */
export const NOTHING: Planned = { owed: 0, again: null };

/** What the sender of one bot needs. `lanes` is how many messages may be in flight at a time. */
export interface SendDeps extends PlanDeps {
  readonly pace: Pace;
  readonly courier: Courier;
  readonly botId: number;
  readonly turnstile: Turnstile;
  readonly lanes: number;
  readonly meter?: Meter | undefined;
}
