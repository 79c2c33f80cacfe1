import { eq } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { oweHelpers } from '../ledger/owe.ts';
import { evening } from '../schema/index.ts';

/** A second message about an evening: the nudge, or the reminder a family asked for. */
export interface SecondMessage {
  readonly kind: 'nudge' | 'reminder';
  readonly eveningId: string;
  readonly childId: string;
  readonly classId: string;
  readonly day: SchoolDay;
  readonly expiresAt: Date;
  readonly now: Date;
}

/** Owes the message to each helper; the ledger's unique key makes it one at most. Returns how many are owed. */
export async function oweAgain(store: Store, message: SecondMessage): Promise<number> {
  return inTransaction(store, async (inner) => {
    // Locked, so that a mark being stored at this moment is either seen by the planner's next look or waits for us.
    await inner.db
      .select({ id: evening.id })
      .from(evening)
      .where(eq(evening.id, message.eveningId))
      .for('update');
    return oweHelpers(
      inner,
      {
        kind: message.kind,
        subjectId: message.childId,
        classId: message.classId,
        day: message.day,
        eveningId: message.eveningId,
        notBefore: message.now,
        expiresAt: message.expiresAt,
      },
      message.now,
    );
  });
}
