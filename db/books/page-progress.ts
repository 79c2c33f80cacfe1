import { and, desc, eq, gte, inArray, isNotNull, lte } from 'drizzle-orm';
import {
  addDays,
  type Pace,
  paceOf,
  type QueuedBook,
  type SchoolDay,
  schoolDaysIn,
} from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import { childrenOfClass, type ListedChild } from '../children/list-children.ts';
import { listBreaks } from '../classes/breaks.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { SchoolClass } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { evening, pageLog } from '../schema/index.ts';
import type { Book } from './book-settings.ts';
import { childQueues } from './child-queues.ts';

/** How far back a child's pace is taken from, in days, today not counted: four weeks. */
export const PACE_DAYS = 28;
/** How far ahead anything is projected, in days: a year. */
const AHEAD_DAYS = 365;

/** Where a child is in its books. */
export interface ChildProgress {
  readonly child: ListedChild;
  /** The books of its line in order, those that are done as well. */
  readonly queue: readonly QueuedBook<Book>[];
  /** From the evenings of the last {@link PACE_DAYS} days that asked for pages; null while too few were answered. */
  readonly pace: Pace | null;
  /** School days on which it may go on, breaks left out, in order. Today is one until its pages are told. */
  readonly days: readonly SchoolDay[];
}

/** Where the children of a class are in their books, by roster number. */
export async function readPageProgress(
  store: Store,
  scope: TeacherScope,
  now: Date,
): Promise<ChildProgress[]> {
  return pageProgressOf(store, await getClass(store, scope), now);
}

/** The same for the engine's own work. */
export async function pageProgressOf(
  store: Store,
  schoolClass: SchoolClass,
  now: Date,
): Promise<ChildProgress[]> {
  const { id: classId, zone, weekdays } = schoolClass;
  const { day: today } = localTimeAt(now, zone);
  const children = await childrenOfClass(store, classId);
  const childIds = children.map(({ id }) => id);
  const queues = await childQueues(store, { classId, childIds });
  const asked = await readAsked(store, childIds, today);
  const breaks = await listBreaks(store, classId, today);
  const ahead = schoolDaysIn(today, addDays(today, AHEAD_DAYS), { weekdays, breaks });
  const afterToday = ahead.filter((day) => day > today);
  return children.map((child) => {
    const own = asked.filter(({ childId }) => childId === child.id);
    // Today's pages may still be told; until then the day counts as one of those ahead.
    const told = own.filter(({ day, pages }) => day < today || pages !== null);
    const isTodayTold = told.some(({ day }) => day === today);
    return {
      child,
      queue: queues.get(child.id) ?? [],
      pace: paceOf(told.map(({ pages }) => pages)),
      days: isTodayTold ? afterToday : ahead,
    };
  });
}

/** The children's evenings of the last weeks that asked for pages, with what was last said of them. */
async function readAsked({ db }: Store, childIds: string[], today: SchoolDay) {
  if (childIds.length === 0) return [];
  return db
    .selectDistinctOn([evening.id], {
      childId: evening.childId,
      day: evening.day,
      pages: pageLog.pages,
    })
    .from(evening)
    .leftJoin(pageLog, eq(pageLog.eveningId, evening.id))
    .where(
      and(
        inArray(evening.childId, childIds),
        isNotNull(evening.bookId),
        gte(evening.day, addDays(today, -PACE_DAYS)),
        lte(evening.day, today),
      ),
    )
    .orderBy(evening.id, desc(pageLog.revision));
}
