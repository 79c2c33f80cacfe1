import { and, eq, gte } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { oweTeachers } from '../ledger/owe.ts';
import type { Delivery } from '../ledger/read-delivery.ts';
import { ledger } from '../schema/index.ts';
import type { Greeting } from './greeting.ts';

/**
 * Owes the teachers of a class one message that their greeting cannot be sent, instead of `delivery`: once for each greeting,
 * however many families were to get it.
 */
export async function oweGreetingNotice(
  store: Store,
  delivery: Delivery,
  input: { greeting: Greeting; now: Date },
): Promise<void> {
  const { classId, day, expiresAt } = delivery;
  await inTransaction(store, async (inner) => {
    const told = await inner.db
      .select({ id: ledger.id })
      .from(ledger)
      .where(
        and(
          eq(ledger.subjectId, classId),
          eq(ledger.kind, 'greeting'),
          eq(ledger.recipientKind, 'teacher'),
          gte(ledger.enqueuedAt, input.greeting.createdAt),
        ),
      )
      .limit(1);
    if (told.length > 0) return;
    await oweTeachers(
      inner,
      {
        ...{ kind: 'greeting', subjectId: classId, classId, day, eveningId: null },
        ...{ notBefore: input.now, expiresAt },
      },
      input.now,
    );
  });
}
