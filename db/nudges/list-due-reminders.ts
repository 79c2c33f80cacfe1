import { and, eq, gt, isNull, lte, sql } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { child, evening, ledger, schoolClass } from '../schema/index.ts';

/** A reminder that a family asked for and that is due. */
export interface DueReminder {
  readonly eveningId: string;
  readonly childId: string;
  readonly classId: string;
  readonly zone: string;
  readonly day: SchoolDay;
}

/** How late a reminder may still come when the service was down, in milliseconds. */
export const REMINDER_LATE_MS = 60 * 60_000;

/** Reminders due at `now` that are not owed yet, of evenings that nobody has started or put off meanwhile and of children that
 * are still in their class. */
export async function listDueReminders(store: Store, now: Date): Promise<DueReminder[]> {
  const rows = await store.db
    .select({
      eveningId: evening.id,
      childId: evening.childId,
      classId: evening.classId,
      zone: schoolClass.zone,
      day: evening.day,
    })
    .from(evening)
    .innerJoin(schoolClass, eq(schoolClass.id, evening.classId))
    .innerJoin(child, eq(child.id, evening.childId))
    .where(
      and(
        lte(evening.remindAt, now),
        gt(evening.remindAt, new Date(now.getTime() - REMINDER_LATE_MS)),
        isNull(evening.startedAt),
        isNull(evening.declinedAt),
        isNull(evening.stoppedAt),
        isNull(child.archivedAt),
        isNull(schoolClass.archivedAt),
        sql`not exists (select 1 from ${ledger} where ${ledger.eveningId} = ${evening.id} and ${ledger.kind} = 'reminder')`,
      ),
    );
  return rows.map((row) => ({ ...row, day: storedDay(row.day) }));
}
