import { and, eq, gte } from 'drizzle-orm';
import { addDays, type SchoolDay, weekdayOf } from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { ledger, schoolClass } from '../schema/index.ts';
import { type ClassSettings, checkClassSettings } from './check-class.ts';
import { gradeKept } from './class-grade.ts';
import { getClass, type TeacherScope } from './get-class.ts';
import { LOOK_NOW } from './look-again.ts';
import type { SchoolClass } from './school-class.ts';

/**
 * Changes some settings of a class. The result as a whole is checked, so that no two settings contradict each other. A
 * curriculum chosen without a grade keeps the class's grade where it names one so, and clears it where it does not.
 *
 * `now` is kept as the instant since when days and times are in force: a time of today that is over already counts from
 * tomorrow. A digest moved to a time that is over comes at once, unless there was one in the last week. A setting changed to
 * what it is already changes nothing.
 */
export async function updateClass(
  store: Store,
  scope: TeacherScope,
  input: { changes: Partial<ClassSettings>; now: Date },
): Promise<SchoolClass> {
  return inTransaction(store, async (inner) => {
    const { id, digestSince: since, ...before } = await getClass(inner, scope);
    const grade = gradeKept(input.changes.curriculum ?? before.curriculum, before.grade);
    const settings = checkClassSettings({ ...before, grade, ...input.changes });
    const { day } = localTimeAt(input.now, settings.zone);
    const keepsSince =
      !haveDigestTimesChanged(before, settings) || !(await hadDigestLately(inner, id, day));
    const digestSince = keepsSince ? since : input.now;
    await inner.db
      .update(schoolClass)
      .set({
        ...settings,
        weekdays: [...settings.weekdays],
        digestSince,
        lookAt: LOOK_NOW,
        ...(haveTimesChanged(before, settings, day) ? { timesSince: input.now } : {}),
      })
      .where(eq(schoolClass.id, id));
    return { ...settings, id, digestSince };
  });
}

/** Whether something changed that could make an evening of today due: another day of the week could not. */
function haveTimesChanged(before: ClassSettings, after: ClassSettings, today: SchoolDay): boolean {
  const weekday = weekdayOf(today);
  const addsToday = after.weekdays.includes(weekday) && !before.weekdays.includes(weekday);
  return addsToday || before.zone !== after.zone || before.eveningTime !== after.eveningTime;
}

function haveDigestTimesChanged(before: ClassSettings, after: ClassSettings): boolean {
  return (
    before.zone !== after.zone ||
    before.digestWeekday !== after.digestWeekday ||
    before.digestTime !== after.digestTime
  );
}

/** Whether a digest was owed in the seven days that end with `today`. */
async function hadDigestLately(store: Store, classId: string, today: SchoolDay): Promise<boolean> {
  const rows = await store.db
    .select({ id: ledger.id })
    .from(ledger)
    .where(
      and(
        eq(ledger.subjectId, classId),
        eq(ledger.kind, 'digest'),
        gte(ledger.day, addDays(today, -6)),
      ),
    )
    .limit(1);
  return rows.length > 0;
}
