import { and, count, eq, gt, lte, or } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { ledger } from '../schema/index.ts';

/** How many messages are due at `now` and have not ended: waiting for their turn, or on their way. */
export async function countOutstanding(store: Store, now: Date): Promise<number> {
  const due = and(
    eq(ledger.status, 'planned'),
    lte(ledger.notBefore, now),
    gt(ledger.expiresAt, now),
  );
  const [row] = await store.db
    .select({ rows: count() })
    .from(ledger)
    .where(or(due, eq(ledger.status, 'attempting')));
  return row?.rows ?? 0;
}
