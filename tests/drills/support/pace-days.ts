import { addDays, type EveningStatus, isSchoolDay, type SchoolDay } from '../../../drills/index.ts';
import { day } from './day.ts';

/** A Monday of term. */
export const MONDAY = day('2026-09-07');
export const TUESDAY = day('2026-09-08');
export const WEDNESDAY = day('2026-09-09');
export const THURSDAY = day('2026-09-10');
export const FRIDAY = day('2026-09-11');

/** School from Monday to Friday. */
export const WEEKDAYS_OF_CLASS = [1, 2, 3, 4, 5] as const;
export const CALENDAR = { weekdays: WEEKDAYS_OF_CLASS, breaks: [] };

/** So many evenings in a row on school days, the first on `from`, all ended in the same way. */
export function evenings(from: SchoolDay, count: number, status: EveningStatus) {
  const found: { day: SchoolDay; status: EveningStatus }[] = [];
  for (let ahead = 0; found.length < count; ahead += 1) {
    const on = addDays(from, ahead);
    if (isSchoolDay(on, CALENDAR)) found.push({ day: on, status });
  }
  return found;
}
