import {
  addDays,
  daysBetween,
  isSchoolDay,
  type SchoolCalendar,
  type SchoolDay,
  schoolDaysIn,
  weekdayOf,
} from '../calendar/school-day.ts';

const DAYS_A_WEEK = 7;
/** A class without any school day for a year has no further weeks. */
const LONGEST_GAP = 53;
/** As far back as a break can reach, and a good deal more. */
const FURTHEST_BACK = 366;

/**
 * The Monday of a day's week, as ISO 8601 has weeks.
 *
 * @example
 * mondayOf(thursday); // '2026-09-14' when the day is '2026-09-17'
 */
export function mondayOf(day: SchoolDay): SchoolDay {
  return addDays(day, 1 - weekdayOf(day));
}

/**
 * Which week of a term that began on `firstDay` a day's week is, from 1. A week without a school day is no week of the term:
 * those after it move on. Null for such a week, and for any before the term.
 *
 * @example
 * weekOf(day, { weekdays: [1, 2, 3, 4, 5], breaks: [] }, addDays(day, 7)); // 2
 */
export function weekOf(
  firstDay: SchoolDay,
  calendar: SchoolCalendar,
  day: SchoolDay,
): number | null {
  const monday = mondayOf(day);
  if (!firstIn(monday, firstDay, calendar)) return null;
  let week = 0;
  for (let at = mondayOf(firstDay); at <= monday; at = addDays(at, DAYS_A_WEEK)) {
    if (firstIn(at, firstDay, calendar)) week += 1;
  }
  return week;
}

/**
 * The first school day of each of a term's first `count` weeks; fewer when a year without school days follows.
 *
 * @example
 * weekStarts(wednesday, calendar, 2); // ['2026-09-16', '2026-09-21']
 */
export function weekStarts(
  firstDay: SchoolDay,
  calendar: SchoolCalendar,
  count: number,
): SchoolDay[] {
  const starts: SchoolDay[] = [];
  let gap = 0;
  for (let at = mondayOf(firstDay); starts.length < count && gap < LONGEST_GAP; ) {
    const first = firstIn(at, firstDay, calendar);
    gap = first ? 0 : gap + 1;
    if (first) starts.push(first);
    at = addDays(at, DAYS_A_WEEK);
  }
  return starts;
}

/**
 * Where a term begins when it is moved a week later, or earlier: the first school day of the next week that has one, or of the
 * one before. Null when there is none within a year.
 *
 * @example
 * shiftedStart(monday, calendar, 1); // '2026-09-21' when the Monday is '2026-09-14'
 */
export function shiftedStart(
  firstDay: SchoolDay,
  calendar: SchoolCalendar,
  by: 1 | -1,
): SchoolDay | null {
  for (let weeks = 1; weeks <= LONGEST_GAP; weeks += 1) {
    const monday = addDays(mondayOf(firstDay), by * weeks * DAYS_A_WEEK);
    const first = firstIn(monday, monday, calendar);
    if (first) return first;
  }
  return null;
}

/**
 * The last school day strictly before a day; null when the 366 days before hold none.
 *
 * @example
 * schoolDayBefore(monday, { weekdays: [1, 2, 3, 4, 5], breaks: [] }); // '2026-09-11', a Friday
 */
export function schoolDayBefore(day: SchoolDay, calendar: SchoolCalendar): SchoolDay | null {
  for (let back = 1; back <= FURTHEST_BACK; back += 1) {
    const before = addDays(day, -back);
    if (isSchoolDay(before, calendar)) return before;
  }
  return null;
}

/** The first school day of the week from `monday` that belongs to a term from `firstDay`. */
function firstIn(
  monday: SchoolDay,
  firstDay: SchoolDay,
  calendar: SchoolCalendar,
): SchoolDay | undefined {
  const from = daysBetween(monday, firstDay) > 0 ? firstDay : monday;
  return schoolDaysIn(from, addDays(monday, DAYS_A_WEEK - 1), calendar)[0];
}
