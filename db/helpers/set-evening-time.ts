import { and, eq, inArray, isNull, sql } from 'drizzle-orm';
import type { TimeOfDay } from '../../drills/index.ts';
import { isEveningTime } from '../classes/check-class.ts';
import { lookAgain } from '../classes/look-again.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { child, helperChild, schoolClass } from '../schema/index.ts';

/**
 * Sets the family's own evening time for all children of this helper, from the next evening on: where it differs from the
 * time so far, `now` is kept as the instant it is in force since. Returns how many children.
 */
export async function setEveningTime(
  store: Store,
  input: { helperId: string; time: TimeOfDay; now: Date },
): Promise<number> {
  if (!isEveningTime(input.time)) throw new AppError('invalid', 'evening time');
  const own = store.db
    .select({ id: helperChild.childId })
    .from(helperChild)
    .where(and(eq(helperChild.helperId, input.helperId), isNull(helperChild.leftAt)));
  const classTime = store.db
    .select({ time: schoolClass.eveningTime })
    .from(schoolClass)
    .where(eq(schoolClass.id, child.classId));
  const now = sql.param(input.now, child.timeSince);
  const classes = store.db.select({ id: child.classId }).from(child).where(inArray(child.id, own));
  return inTransaction(store, async (inner) => {
    await lookAgain(inner, inArray(schoolClass.id, classes));
    const changed = await inner.db
      .update(child)
      .set({
        eveningTime: input.time,
        timeSince: sql`case when coalesce(${child.eveningTime}, (${classTime})) = ${input.time} then ${child.timeSince} else ${now} end`,
      })
      .where(inArray(child.id, own))
      .returning({ id: child.id });
    return changed.length;
  });
}
