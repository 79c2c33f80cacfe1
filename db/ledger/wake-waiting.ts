import { and, eq, inArray, lt, lte, not, or, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/pg-core';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { ledger } from '../schema/index.ts';
import { AFTER } from './find-follower.ts';
import { priorityOf } from './priority.ts';

/**
 * Enqueues again what is waiting without a job: rows put back in line whose time has come, and rows enqueued before
 * `enqueuedBefore`, because a job can be lost with the process that held it while the row cannot. A row that waits for another
 * message is left to that one. Returns how many.
 */
export async function wakeWaiting(
  store: Store,
  input: { now: Date; enqueuedBefore: Date },
): Promise<number> {
  return inTransaction(store, async (inner) => {
    const waiting = inner.db
      .select({ id: ledger.id })
      .from(ledger)
      .where(
        and(
          eq(ledger.status, 'planned'),
          lte(ledger.notBefore, input.now),
          or(lt(ledger.enqueuedAt, input.enqueuedBefore), lt(ledger.enqueuedAt, ledger.notBefore)),
          not(waitsForAnother(inner)),
        ),
      )
      .limit(5_000)
      .for('update', { skipLocked: true });
    const rows = await inner.db
      .update(ledger)
      .set({ enqueuedAt: input.now })
      .where(inArray(ledger.id, waiting))
      .returning({ ledgerId: ledger.id, botId: ledger.botId, kind: ledger.kind });
    await inner.queue.enqueue(
      inner.db,
      rows.map(({ kind, ...job }) => ({ ...job, priority: priorityOf(kind) })),
    );
    return rows.length;
  });
}

/** Whether the message that comes before this one in the same chat has not ended yet. */
function waitsForAnother({ db }: Store) {
  const before = alias(ledger, 'before');
  const pairs = Object.entries(AFTER).map(
    ([kind, first]) => sql`(${ledger.kind} = ${kind} and ${before.kind} = ${first})`,
  );
  const open = db
    .select({ one: sql`1` })
    .from(before)
    .where(
      and(
        eq(before.classId, ledger.classId),
        eq(before.day, ledger.day),
        eq(before.recipientId, ledger.recipientId),
        inArray(before.status, ['planned', 'attempting']),
        or(...pairs),
      ),
    );
  return sql`exists ${open}`;
}
