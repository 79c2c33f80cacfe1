import { and, eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { LEDGER_KINDS, ledger } from '../schema/index.ts';
import type { LedgerKind } from './owe.ts';

/** Which message a message waits for. */
export const AFTER: Partial<Record<LedgerKind, LedgerKind>> = {
  digest_picture: 'digest',
  digest_table: 'digest_picture',
};

/** The message that waits for this one, once this one has ended, however it ended. */
export async function findFollower(store: Store, ledgerId: string): Promise<string | null> {
  const [first] = await store.db.select().from(ledger).where(eq(ledger.id, ledgerId));
  if (!first || first.status === 'planned' || first.status === 'attempting') return null;
  const kind = LEDGER_KINDS.find((each) => AFTER[each] === first.kind);
  if (!kind) return null;
  const [next] = await store.db
    .select({ id: ledger.id })
    .from(ledger)
    .where(
      and(
        eq(ledger.subjectId, first.subjectId),
        eq(ledger.day, first.day),
        eq(ledger.kind, kind),
        eq(ledger.recipientId, first.recipientId),
        eq(ledger.status, 'planned'),
      ),
    );
  return next?.id ?? null;
}
