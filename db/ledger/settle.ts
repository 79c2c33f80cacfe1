import { and, eq, inArray, lt, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { ledger } from '../schema/index.ts';

/**
 * Takes a planned message to send it: planned -> attempting. False when somebody else took it first. Written before the call
 * leaves, so that a crash in the middle leaves a trace.
 */
export async function claimDelivery(store: Store, ledgerId: string, now: Date): Promise<boolean> {
  const rows = await store.db
    .update(ledger)
    .set({ status: 'attempting', attemptedAt: now, tries: sql`${ledger.tries} + 1` })
    .where(and(eq(ledger.id, ledgerId), eq(ledger.status, 'planned')))
    .returning({ id: ledger.id });
  return rows.length > 0;
}

/** How an attempt ended. `problem` is a short code for the log and the operator, never a text or a name. */
export type Settlement =
  | { readonly status: 'sent'; readonly messageId: number }
  | { readonly status: 'failed' | 'unknown'; readonly problem: string };

type LedgerStatus = (typeof ledger.$inferSelect)['status'];

/**
 * Writes how an attempt ended. A row found sent stays sent. Who has not claimed the row says `from` planned, and so leaves
 * another sender's attempt alone.
 */
export async function settleDelivery(
  store: Store,
  ledgerId: string,
  settlement: Settlement,
  now: Date,
  from: readonly LedgerStatus[] = ['planned', 'attempting', 'unknown'],
): Promise<void> {
  await store.db
    .update(ledger)
    .set({
      status: settlement.status,
      messageId: settlement.status === 'sent' ? settlement.messageId : null,
      problem: settlement.status === 'sent' ? null : settlement.problem,
      settledAt: now,
    })
    .where(and(eq(ledger.id, ledgerId), inArray(ledger.status, [...from])));
}

/** Puts a message that surely did not arrive, or has not left yet, back in line, not before `notBefore`. */
export async function postponeDelivery(
  store: Store,
  ledgerId: string,
  input: { notBefore: Date; problem: string; from: 'planned' | 'attempting' },
): Promise<void> {
  const { from, ...line } = input;
  await store.db
    .update(ledger)
    .set({ status: 'planned', ...line })
    .where(and(eq(ledger.id, ledgerId), eq(ledger.status, from)));
}

/** Calls attempts that began before `before` and never ended `unknown`: the process died, or the answer was lost. */
export async function giveUpAttempts(store: Store, before: Date, now: Date): Promise<number> {
  const rows = await store.db
    .update(ledger)
    .set({ status: 'unknown', problem: 'no_answer', settledAt: now })
    .where(and(eq(ledger.status, 'attempting'), lt(ledger.attemptedAt, before)))
    .returning({ id: ledger.id });
  return rows.length;
}
