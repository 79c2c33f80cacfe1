import { addDays, type ChildPast, type SchoolDay, schoolDaysIn } from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import { listBreaks } from '../classes/breaks.ts';
import type { SchoolClass } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { listPastEvenings } from '../evenings/history.ts';
import { readMemory } from '../memory/read-memory.ts';
import { byEvening } from './by-evening.ts';
import { readPartScores } from './part-scores.ts';
import { readPages } from './week-rows.ts';

/** Further back than any child's first evening: a child stays in a class for a school year or two. */
const FURTHEST_WEEKS = 208;

/**
 * One child's own past up to `now`: the last `weeks` weeks, or everything when that is null, and nothing from before its first
 * evening. Today counts as a school day only once it is practised. For verbs that have checked whose child it is.
 */
export async function childPast(
  store: Store,
  schoolClass: SchoolClass,
  input: { childId: string; weeks: number | null; now: Date },
): Promise<ChildPast> {
  const { day: today } = localTimeAt(input.now, schoolClass.zone);
  const from = addDays(today, 1 - 7 * (input.weeks ?? FURTHEST_WEEKS));
  const range = { classId: schoolClass.id, childId: input.childId };
  const past = await listPastEvenings(store, { ...range, from, until: today });
  const scores = await readPartScores(store, { ...range, first: from, last: today });
  const pages = byEvening(await readPages(store, { ...range, first: from, last: today }));
  const [first] = past;
  return {
    today,
    days: first ? await daysSince(store, schoolClass, first.day, today) : [],
    evenings: past.map(({ eveningId, day, status }) => ({
      day,
      status,
      parts: scores(eveningId),
      pages: pages(eveningId).at(0)?.pages ?? null,
    })),
    memory: await readMemory(store, input.childId),
  };
}

/** The school days from one day to the day before another. */
async function daysSince(
  store: Store,
  { id, weekdays }: SchoolClass,
  first: SchoolDay,
  today: SchoolDay,
): Promise<SchoolDay[]> {
  const breaks = await listBreaks(store, id, first);
  return schoolDaysIn(first, addDays(today, -1), { weekdays, breaks });
}
