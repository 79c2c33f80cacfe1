import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { schoolClass } from '../schema/index.ts';
import { type ClassSettings, checkClassSettings } from './check-class.ts';
import { getClass, type TeacherScope } from './get-class.ts';
import type { SchoolClass } from './school-class.ts';

/**
 * Changes some settings of a class. The result as a whole is checked, so that no two settings contradict each other.
 *
 * Other days or times count from the next evening or digest on: `now` is kept as the instant they are in force since. A
 * setting changed to what it is already changes nothing.
 */
export async function updateClass(
  store: Store,
  scope: TeacherScope,
  input: { changes: Partial<ClassSettings>; now: Date },
): Promise<SchoolClass> {
  return inTransaction(store, async (inner) => {
    const { id, digestSince, ...before } = await getClass(inner, scope);
    const settings = checkClassSettings({ ...before, ...input.changes });
    const digest = haveDigestTimesChanged(before, settings) ? input.now : digestSince;
    await inner.db
      .update(schoolClass)
      .set({
        ...settings,
        weekdays: [...settings.weekdays],
        digestSince: digest,
        ...(haveTimesChanged(before, settings) ? { timesSince: input.now } : {}),
      })
      .where(eq(schoolClass.id, id));
    return { ...settings, id, digestSince: digest };
  });
}

function haveTimesChanged(before: ClassSettings, after: ClassSettings): boolean {
  return (
    before.zone !== after.zone ||
    before.eveningTime !== after.eveningTime ||
    before.weekdays.join() !== after.weekdays.join()
  );
}

function haveDigestTimesChanged(before: ClassSettings, after: ClassSettings): boolean {
  return (
    before.zone !== after.zone ||
    before.digestWeekday !== after.digestWeekday ||
    before.digestTime !== after.digestTime
  );
}
