import {
  addDays,
  type SchoolCalendar,
  type SchoolDay,
  schoolDaysIn,
  weekdayOf,
} from '../../drills/index.ts';

const SUNDAY = 7;

/**
 * The school days a sheet printed today is for: what is left of this week, today included; on its last school day and after it
 * all of next week, if that has any. Empty when neither week has one.
 *
 * @example
 * printWeek(monday, calendar).length; // 5: Monday to Friday
 */
export function printWeek(today: SchoolDay, calendar: SchoolCalendar): readonly SchoolDay[] {
  const sunday = addDays(today, SUNDAY - weekdayOf(today));
  const left = schoolDaysIn(today, sunday, calendar);
  if (left.some((day) => day > today)) return left;
  const next = schoolDaysIn(addDays(sunday, 1), addDays(sunday, 7), calendar);
  return next.length > 0 ? next : left;
}
