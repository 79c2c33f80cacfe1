import { and, asc, eq, isNotNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import type { LedgerKind } from '../ledger/owe.ts';
import { inbox, ledger } from '../schema/index.ts';
import { HAS_CRASHED } from './has-crashed.ts';

/** A message that failed by a fault of ours whenever it was tried. Nothing of what it says, nor to whom. */
export interface DeadMessage {
  readonly ledgerId: string;
  readonly kind: LedgerKind;
  readonly classId: string;
  readonly botId: number;
  /** The name of the error. */
  readonly problem: string;
  readonly since: Date;
  /** From then on it is not sent any more, replayed or not. */
  readonly expiresAt: Date;
}

/** An update that failed whenever it was handled. What it said is kept for two days and not shown. */
export interface DeadUpdate {
  readonly botId: number;
  readonly updateId: number;
  readonly tries: number;
  readonly since: Date;
}

/** What failed for good by a fault of ours, oldest first, at most 500 of each. */
export async function listDeadLetters(
  store: Store,
): Promise<{ readonly messages: DeadMessage[]; readonly updates: DeadUpdate[] }> {
  const messages = await store.db
    .select()
    .from(ledger)
    .where(and(eq(ledger.status, 'failed'), HAS_CRASHED))
    .orderBy(asc(ledger.settledAt), asc(ledger.id))
    .limit(500);
  const updates = await store.db
    .select({
      botId: inbox.botId,
      updateId: inbox.updateId,
      tries: inbox.tries,
      handledAt: inbox.handledAt,
      receivedAt: inbox.receivedAt,
    })
    .from(inbox)
    .where(and(eq(inbox.status, 'failed'), isNotNull(inbox.payload)))
    .orderBy(asc(inbox.botId), asc(inbox.updateId))
    .limit(500);
  return {
    messages: messages.map(({ id, problem, settledAt, enqueuedAt, ...row }) => ({
      ledgerId: id,
      ...{ kind: row.kind, classId: row.classId, botId: row.botId, expiresAt: row.expiresAt },
      problem: problem ?? '',
      since: settledAt ?? enqueuedAt,
    })),
    updates: updates.map(({ handledAt, receivedAt, ...row }) => ({
      ...row,
      since: handledAt ?? receivedAt,
    })),
  };
}
