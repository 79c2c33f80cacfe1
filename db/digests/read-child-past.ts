import { addDays, type ChildPast, type SchoolDay, schoolDaysIn } from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import type { ListedChild } from '../children/list-children.ts';
import { getChild } from '../children/own-child.ts';
import { listBreaks } from '../classes/breaks.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { SchoolClass } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { listPastEvenings } from '../evenings/history.ts';
import { readMemory } from '../memory/read-memory.ts';
import { byEvening } from './by-evening.ts';
import { readPartScores } from './part-scores.ts';
import { readPages } from './week-rows.ts';

/** Further back than any child's first evening: a child stays in a class for a school year or two. */
const FURTHEST_WEEKS = 208;

/** A child of the class with its past. `heard` is the last day on which its family marked or put off an evening. */
export interface ChildWithPast {
  readonly child: ListedChild;
  readonly past: ChildPast;
  readonly heard: SchoolDay | null;
}

/**
 * One child's own past for a teacher of its class: the last `weeks` weeks up to `now`, or everything when that is null, and
 * nothing from before its first evening. Today counts as a school day only once it is practised. A child of another class or an
 * archived one is `not_found`. What was practised in another class before a move belongs to it.
 */
export async function readChildPast(
  store: Store,
  scope: TeacherScope,
  input: { number: number; weeks: number | null; now: Date },
): Promise<ChildWithPast> {
  const schoolClass = await getClass(store, scope);
  const child = await getChild(store, scope, input.number);
  const { day: today } = localTimeAt(input.now, schoolClass.zone);
  const from = addDays(today, 1 - 7 * (input.weeks ?? FURTHEST_WEEKS));
  const range = { classId: scope.classId, childId: child.id };
  const past = await listPastEvenings(store, { ...range, from, until: today });
  const scores = await readPartScores(store, { ...range, first: from, last: today });
  const pages = byEvening(await readPages(store, { ...range, first: from, last: today }));
  const [first] = past;
  const heard = past.findLast(({ status }) => status === 'practised' || status === 'not_today');
  return {
    child,
    heard: heard?.day ?? null,
    past: {
      today,
      days: first ? await daysSince(store, schoolClass, first.day, today) : [],
      evenings: past.map(({ eveningId, day, status }) => ({
        day,
        status,
        parts: scores(eveningId),
        pages: pages(eveningId).at(0)?.pages ?? null,
      })),
      memory: await readMemory(store, child.id),
    },
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
