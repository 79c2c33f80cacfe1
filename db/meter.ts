import type { LedgerKind } from './ledger/owe.ts';

/** How a message that we owed has ended, for good. `not_wanted`: it was no longer due, and nothing left. */
export interface EndedMessage {
  readonly kind: LedgerKind;
  readonly outcome: 'sent' | 'failed' | 'unknown' | 'not_wanted';
  /** The short code that the ledger has; none when it was sent. */
  readonly problem?: string;
}

/** Counts what happens, for the operator's graphs: kinds and codes, never a name, a text or a number of anybody. */
export interface Meter {
  ended(message: EndedMessage): void;
  /** So many attempts lost their process and are `unknown` now. */
  abandoned(attempts: number): void;
  /** The service has said "too many" to a call. */
  refused(): void;
  /** So many updates came in; of so many nothing was kept. */
  received(updates: { readonly stored: number; readonly leftOut: number }): void;
  /** A tap was answered, so long after it came in. */
  answered(milliseconds: number): void;
  drawn(what: 'picture' | 'clip', milliseconds: number): void;
  /** The webhook answered a call, with this status of HTTP. */
  called(status: number): void;
}

const nothing = () => {};

/** Counts nothing: for scripts and tests, and for processes that nobody watches. */
export const noMeter: Meter = {
  ended: nothing,
  abandoned: nothing,
  refused: nothing,
  received: nothing,
  answered: nothing,
  drawn: nothing,
  called: nothing,
};
