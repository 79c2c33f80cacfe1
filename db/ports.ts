/** What the layers above the store agree on. */
import type { Delivery } from './ledger/read-delivery.ts';

/** What time it is, for everything that means a school's day. In rehearsal it can be moved. */
export interface Clock {
  now(): Date;
}

/** Counts, ids and codes for the operator. Never a name, never a message text. */
export interface Log {
  info(fields: Readonly<Record<string, unknown>>, event: string): void;
  warn(fields: Readonly<Record<string, unknown>>, event: string): void;
  error(fields: Readonly<Record<string, unknown>>, event: string): void;
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
