import { and, eq, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { consent, helperChild, ledger } from '../schema/index.ts';

/**
 * Ends a helper's part with all children at once and records the agreement as withdrawn. What is still waiting to be sent to
 * the helper is called off. Returns how many children.
 */
export async function leaveAll(
  store: Store,
  input: { helperId: string; now: Date },
): Promise<number> {
  return inTransaction(store, async ({ db }) => {
    const left = await db
      .update(helperChild)
      .set({ leftAt: input.now })
      .where(and(eq(helperChild.helperId, input.helperId), isNull(helperChild.leftAt)))
      .returning({ childId: helperChild.childId });
    await db
      .update(consent)
      .set({ withdrawnAt: input.now })
      .where(and(eq(consent.helperId, input.helperId), isNull(consent.withdrawnAt)));
    await db
      .update(ledger)
      .set({ status: 'failed', problem: 'left', settledAt: input.now })
      .where(and(eq(ledger.recipientId, input.helperId), eq(ledger.status, 'planned')));
    return left.length;
  });
}
