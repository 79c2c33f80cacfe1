import {
  addDays,
  isSchoolDay,
  mondayOf,
  nextSchoolDay,
  schoolDayBefore,
  weekOf,
} from '../../drills/index.ts';
import { instantAt, localTimeAt } from '../calendar/zone.ts';
import { listBreaks } from '../classes/breaks.ts';
import { CLASS_LIMITS } from '../classes/class-limits.ts';
import { type SchoolClass, storedTime } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { schemeInUse } from './read-scheme.ts';
import { useSchemeWeek } from './use-scheme-week.ts';

const MIDNIGHT = storedTime('00:00');
const QUIET = storedTime(CLASS_LIMITS.quietFrom);
/** As far back as the last evening before a term can be. */
const LOOK_BACK_DAYS = 366;

/**
 * Puts the plan of the term's week in force, from the Monday of a week that has school days until its last evening is over,
 * unless the teacher chose another plan for the week. Whatever changed the term meanwhile, an edit or a break that moved, is
 * followed at the next look. Past the term's end nothing is done: the last plan stays. Returns the week whose plan was put in
 * force, null when nothing was to be done.
 */
export async function followTerm(
  store: Store,
  { id: classId, zone, weekdays, eveningTime }: SchoolClass,
  now: Date,
): Promise<number | null> {
  const scheme = await schemeInUse(store, classId);
  if (!scheme) return null;
  const { day } = localTimeAt(now, zone);
  const breaks = await listBreaks(store, classId, addDays(scheme.firstDay, -LOOK_BACK_DAYS));
  const calendar = { weekdays, breaks };
  const monday = mondayOf(day);
  const isTonight = isSchoolDay(day, calendar) && now < instantAt(day, QUIET, zone);
  const next = isTonight ? day : nextSchoolDay(day, calendar);
  // Over the weekend the week is over, and the next one has not begun.
  if (!next || mondayOf(next) !== monday) return null;
  const week = weekOf(scheme.firstDay, calendar, day);
  if (week === null) return null;
  const begins = instantAt(monday, MIDNIGHT, zone);
  const before = schoolDayBefore(monday, calendar);
  const chosenAfter = before ? instantAt(before, eveningTime, zone) : begins;
  const due = { classId, schemeId: scheme.id, week, begins, chosenAfter, now };
  return (await useSchemeWeek(store, due)) ? week : null;
}
