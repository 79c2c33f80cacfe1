import type { Clock, Delivery, Log, Store } from '../db/index.ts';

/** Real time, for the rate at which messages leave: moving the school's clock does not make the network faster. */
export interface Pace extends Clock {
  sleep(milliseconds: number): Promise<void>;
}

/**
 * How a call to the chat service ended.
 *
 * - `sent`: it answered yes
 * - `refused`: it surely did not take the message and may take it later; `retryAfterSeconds` when it says so for all
 * - `gone`: this person cannot be written to (blocked, deleted account)
 * - `rejected`: it will never take this message as it is
 * - `unknown`: the request left and no answer came; it may or may not have arrived
 */
export type Outcome =
  | { readonly kind: 'sent'; readonly messageId: number }
  | { readonly kind: 'refused'; readonly problem: string; readonly retryAfterSeconds?: number }
  | { readonly kind: 'gone' | 'rejected' | 'unknown'; readonly problem: string };

/** A message ready to leave: pictures drawn, texts written. */
export interface Parcel {
  send(): Promise<Outcome>;
}

/** Makes messages of what is owed. Implemented by bot/, which knows what a person sees. */
export interface Courier {
  /** The message, or null when it is no longer wanted (a nudge for an evening that was marked meanwhile). */
  prepare(delivery: Delivery): Promise<Parcel | null>;
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
