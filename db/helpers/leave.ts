import { and, eq, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { consent, helperChild } from '../schema/index.ts';

/** Ends a helper's part with all children at once and records the agreement as withdrawn. Returns how many children. */
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
    return left.length;
  });
}
