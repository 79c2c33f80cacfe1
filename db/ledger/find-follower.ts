import { and, asc, eq, inArray } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { child, LEDGER_KINDS, ledger } from '../schema/index.ts';
import type { LedgerKind } from './owe.ts';

/** Which message a message waits for: the one of this kind to the same person about the same class and day, if there is one. */
export const AFTER: Partial<Record<LedgerKind, LedgerKind>> = {
  evening: 'greeting',
  digest_picture: 'digest',
  digest_table: 'digest_picture',
};

/**
 * The messages that wait for this one, once this one has ended, however it ended. After a greeting there is an evening for each
 * child of that helper in the class, in the order of the class list.
 */
export async function findFollowers(store: Store, ledgerId: string): Promise<string[]> {
  const [first] = await store.db.select().from(ledger).where(eq(ledger.id, ledgerId));
  if (!first || first.status === 'planned' || first.status === 'attempting') return [];
  const kinds = LEDGER_KINDS.filter((each) => AFTER[each] === first.kind);
  if (kinds.length === 0) return [];
  const rows = await store.db
    .select({ id: ledger.id })
    .from(ledger)
    .leftJoin(child, eq(child.id, ledger.subjectId))
    .where(
      and(
        eq(ledger.classId, first.classId),
        eq(ledger.day, first.day),
        inArray(ledger.kind, kinds),
        eq(ledger.recipientId, first.recipientId),
        eq(ledger.status, 'planned'),
      ),
    )
    .orderBy(asc(child.number), asc(ledger.id));
  return rows.map(({ id }) => id);
}
