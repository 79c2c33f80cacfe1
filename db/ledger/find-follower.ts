import { and, eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { ledger } from '../schema/index.ts';
import type { LedgerKind } from './owe.ts';

/** Messages that come one after the other in the same chat. */
const FOLLOWERS: Partial<Record<LedgerKind, LedgerKind>> = {
  digest: 'digest_picture',
  digest_picture: 'digest_table',
};

/** The message that waits for this one, if it is still waiting. */
export async function findFollower(store: Store, ledgerId: string): Promise<string | null> {
  const [first] = await store.db.select().from(ledger).where(eq(ledger.id, ledgerId));
  const kind = first && FOLLOWERS[first.kind];
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
