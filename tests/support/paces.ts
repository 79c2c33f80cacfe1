import { listDueChildren, readFamilyPaces, reviewPaces, type Store } from '../../db/index.ts';
import { addDays, isSchoolDay, type SchoolDay } from '../../drills/index.ts';
import { settleEvening } from './deliveries.ts';
import type { Classroom, Family } from './people.ts';
import { anEvening } from './practice.ts';
import { readTable, runSql } from './raw-rows.ts';
import { evening, FRIDAY, MONDAY, THURSDAY, TUESDAY, time, WEDNESDAY } from './term.ts';

const CALENDAR = { weekdays: [1, 2, 3, 4, 5], breaks: [] } as const;

/** Monday to Friday, and the Mondays after. */
export const WEEK = [MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY];
export const NEXT_MONDAY = addDays(MONDAY, 7);
export const LATER_MONDAY = addDays(MONDAY, 14);

/** On which days of a week the drill is due to a child by its family's pace. */
export async function dueDays(
  store: Store,
  { schoolClass }: Classroom,
  childId: string,
  from = MONDAY,
) {
  const days: SchoolDay[] = [];
  for (let ahead = 0; ahead < 5; ahead += 1) {
    const day = addDays(from, ahead);
    const wanted = { classId: schoolClass.id, day, after: null, until: time('17:30') };
    const due = await listDueChildren(store, wanted);
    if (due.some(({ id }) => id === childId)) days.push(day);
  }
  return days;
}

/** The pace of a helper's first child. */
export async function paceOf(store: Store, helperId: string, now = evening(MONDAY)) {
  const [first] = await readFamilyPaces(store, { helperId, now });
  if (!first) throw new Error('the helper has no child');
  return first.pace;
}

/** So many evenings from a day on that arrived and that nobody answered. */
export async function silence(
  store: Store,
  classroom: Classroom,
  family: Family,
  { from = MONDAY, count = 10 }: { from?: SchoolDay; count?: number } = {},
) {
  for (let day = from, made = 0; made < count; day = addDays(day, 1)) {
    if (!isSchoolDay(day, CALENDAR)) continue;
    const { view } = await anEvening(store, classroom, family, { on: day });
    await settleEvening(store, view.id, 'sent', evening(day));
    made += 1;
  }
}

/** Looks at a class's paces in the morning of a day. Returns how many messages are owed. */
export const review = (store: Store, { schoolClass }: Classroom, day: SchoolDay) =>
  reviewPaces(store, { schoolClass, day, now: evening(day, -600) });

/** The messages to teachers about fewer evenings, by how they ended. */
export async function tellings(store: Store, { schoolClass }: Classroom) {
  const rows = await readTable(store, 'ledger');
  return rows.filter((row) => row.kind === 'fewer_evenings' && row.class_id === schoolClass.id);
}

/** Has the waiting message to the teachers end in some way. */
export async function settleTelling(store: Store, { schoolClass }: Classroom, status: string) {
  const of = `kind = 'fewer_evenings' and class_id = '${schoolClass.id}' and status = 'planned'`;
  await runSql(store, `update ledger set status = '${status}' where ${of}`);
}
