/*
 * Dates as whole days since 1970-01-01, by integer arithmetic alone, so that no time zone can shift a day.
 * The method is the proleptic Gregorian conversion published as "days_from_civil" and "civil_from_days"
 * (Howard Hinnant, "chrono-Compatible Low-Level Date Algorithms"): years start in March, so that the leap day comes last.
 */

const DAYS_PER_ERA = 146_097;
const YEARS_PER_ERA = 400;
/** Days from 0000-03-01, where the arithmetic starts, to 1970-01-01, where the count starts. */
const EPOCH_SHIFT = 719_468;

/** The day number of a date that is known to exist: 0 for 1970-01-01. `month` and `day` count from 1. */
export function dayNumberOf(year: number, month: number, day: number): number {
  const marchYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(marchYear / YEARS_PER_ERA);
  const yearOfEra = marchYear - era * YEARS_PER_ERA;
  const marchMonth = (month + 9) % 12;
  const dayOfYear = Math.floor((153 * marchMonth + 2) / 5) + day - 1;
  const leapDays = Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100);
  return era * DAYS_PER_ERA + yearOfEra * 365 + leapDays + dayOfYear - EPOCH_SHIFT;
}

/** The inverse of {@link dayNumberOf}. */
export function dateOf(dayNumber: number): { year: number; month: number; day: number } {
  const shifted = dayNumber + EPOCH_SHIFT;
  const era = Math.floor(shifted / DAYS_PER_ERA);
  const dayOfEra = shifted - era * DAYS_PER_ERA;
  const leapDays =
    Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return { year: yearOfEra + era * YEARS_PER_ERA + (month <= 2 ? 1 : 0), month, day };
}
