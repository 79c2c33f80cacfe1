import { addDays, type SchoolDay, weekdayOf } from '../calendar/school-day.ts';

/** As many as a picture of weeks can hold. */
const MOST_WEEKS = 12;

/**
 * The Monday of a day's week.
 *
 * @example
 * mondayOf(friday); // '2026-09-14' for '2026-09-18'
 */
export function mondayOf(day: SchoolDay): SchoolDay {
  return addDays(day, 1 - weekdayOf(day));
}

/** The Mondays of the weeks that hold some days, in order and each once, the latest twelve; a week without a day is left out. */
export function weekStarts(days: readonly SchoolDay[]): SchoolDay[] {
  return [...new Set(days.map(mondayOf))].sort().slice(-MOST_WEEKS);
}
