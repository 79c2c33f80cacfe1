import { and, eq, inArray, lt, lte } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { ledger } from '../schema/index.ts';

/**
 * Enqueues again what has been waiting since before `enqueuedBefore`: a job can be lost with the process that held it, the
 * row cannot. Returns how many.
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
          lt(ledger.enqueuedAt, input.enqueuedBefore),
        ),
      )
      .limit(5_000)
      .for('update', { skipLocked: true });
    const rows = await inner.db
      .update(ledger)
      .set({ enqueuedAt: input.now })
      .where(inArray(ledger.id, waiting))
      .returning({ id: ledger.id });
    await inner.queue.enqueue(
      inner.db,
      rows.map((row) => row.id),
    );
    return rows.length;
  });
}
