import { and, eq, gte, inArray, lt, sql } from 'drizzle-orm';
import { drillDay, mondayOf, type SchoolDay } from '../../drills/index.ts';
import { listBreaks } from '../classes/breaks.ts';
import { toSchoolClass } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { evening, schoolClass } from '../schema/index.ts';
import { pacesOf } from './read-pace.ts';

/** A child whose time has come. `since` is since when this evening was to be expected. */
interface Due {
  readonly id: string;
  readonly since: Date;
}

/**
 * Of the children of a class whose time has come on a day, those to whom the drill comes on it at their family's pace. What a
 * family or a teacher said about the pace counts from the next evening.
 */
export async function keepDue<T extends Due>(
  store: Store,
  due: readonly T[],
  { classId, day }: { classId: string; day: SchoolDay },
): Promise<T[]> {
  if (due.length === 0) return [];
  const childIds = due.map(({ id }) => id);
  const paceOf = await pacesOf(store, childIds);
  const came = await eveningsOfWeek(store, childIds, day);
  const [row] = await store.db.select().from(schoolClass).where(eq(schoolClass.id, classId));
  if (!row) return [];
  const { weekdays } = toSchoolClass(row);
  const calendar = { weekdays, breaks: await listBreaks(store, classId, mondayOf(day)) };
  return due.flatMap((child) => {
    const { pace, saidAt } = paceOf(child.id);
    const cameThisWeek = came.get(child.id) ?? 0;
    if (drillDay(pace, { day, calendar, cameThisWeek }) !== 'comes') return [];
    const since = saidAt !== null && saidAt > child.since ? saidAt : child.since;
    return [{ ...child, since }];
  });
}

/** How many evenings each child had in the week of a day, before it. */
async function eveningsOfWeek(
  { db }: Store,
  childIds: readonly string[],
  day: SchoolDay,
): Promise<ReadonlyMap<string, number>> {
  const rows = await db
    .select({ childId: evening.childId, evenings: sql<number>`count(*)::int` })
    .from(evening)
    .where(
      and(
        inArray(evening.childId, [...childIds]),
        gte(evening.day, mondayOf(day)),
        lt(evening.day, day),
      ),
    )
    .groupBy(evening.childId);
  return new Map(rows.map(({ childId, evenings }) => [childId, evenings]));
}
