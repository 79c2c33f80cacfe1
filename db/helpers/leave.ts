import { and, eq, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { callOff } from '../ledger/call-off.ts';
import { consent, helperChild, ledger } from '../schema/index.ts';

/**
 * Ends a helper's part with all children at once and records the agreement as withdrawn. What is still waiting to be sent to
 * the helper is called off. Returns how many children.
 */
export async function leaveAll(
  store: Store,
  input: { helperId: string; now: Date },
): Promise<number> {
  return inTransaction(store, async (inner) => {
    const { db } = inner;
    const left = await db
      .update(helperChild)
      .set({ leftAt: input.now })
      .where(and(eq(helperChild.helperId, input.helperId), isNull(helperChild.leftAt)))
      .returning({ childId: helperChild.childId });
    await db
      .update(consent)
      .set({ withdrawnAt: input.now })
      .where(and(eq(consent.helperId, input.helperId), isNull(consent.withdrawnAt)));
    const which = [eq(ledger.recipientId, input.helperId)] as const;
    await callOff(inner, { which, because: 'left', now: input.now });
    return left.length;
  });
}
