import { and, eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { tell } from '../connection/peers.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { priorityOf } from '../ledger/priority.ts';
import { inbox, ledger } from '../schema/index.ts';
import { HAS_CRASHED } from './has-crashed.ts';

/** Names a message or an update that failed for good. */
export type DeadLetter =
  | { readonly ledgerId: string }
  | { readonly botId: number; readonly updateId: number };

/**
 * Has a dead letter tried again from the beginning. One that is not there, or is no dead letter, is `not_found`; a message
 * whose time is over is `expired`.
 */
export async function replayDeadLetter(store: Store, letter: DeadLetter, now: Date): Promise<void> {
  await inTransaction(store, (inner) =>
    'ledgerId' in letter ? replayMessage(inner, letter.ledgerId, now) : replayUpdate(inner, letter),
  );
}

/** Gives a dead letter up for good; an update forgets what it said. `not_found` like {@link replayDeadLetter}. */
export async function dropDeadLetter(store: Store, letter: DeadLetter): Promise<void> {
  const dropped =
    'ledgerId' in letter
      ? await store.db
          .update(ledger)
          .set({ problem: 'dropped' })
          .where(isDead(letter.ledgerId))
          .returning({ id: ledger.id })
      : await store.db
          .update(inbox)
          .set({ status: 'done', payload: null })
          .where(isDeadUpdate(letter))
          .returning({ id: inbox.updateId });
  if (dropped.length === 0) throw new AppError('not_found', 'dead letter');
}

async function replayMessage(inner: Store, ledgerId: string, now: Date): Promise<void> {
  const [row] = await inner.db
    .update(ledger)
    .set({ status: 'planned', problem: null, settledAt: null, enqueuedAt: now })
    .where(isDead(ledgerId))
    .returning();
  if (!row) throw new AppError('not_found', 'dead letter');
  if (row.expiresAt <= now) throw new AppError('expired', 'dead letter');
  const { botId, kind } = row;
  await inner.queue.enqueue(inner.db, [{ ledgerId, botId, priority: priorityOf(kind) }]);
}

async function replayUpdate(
  inner: Store,
  update: { readonly botId: number; readonly updateId: number },
): Promise<void> {
  const rows = await inner.db
    .update(inbox)
    .set({ status: 'pending', tries: 0, notBefore: new Date(0), handledAt: null })
    .where(isDeadUpdate(update))
    .returning({ id: inbox.updateId });
  if (rows.length === 0) throw new AppError('not_found', 'dead letter');
  await tell(inner, 'inbox', String(update.botId));
}

function isDead(ledgerId: string) {
  return and(eq(ledger.id, ledgerId), eq(ledger.status, 'failed'), HAS_CRASHED);
}

function isDeadUpdate({ botId, updateId }: { botId: number; updateId: number }) {
  return and(eq(inbox.botId, botId), eq(inbox.updateId, updateId), eq(inbox.status, 'failed'));
}
