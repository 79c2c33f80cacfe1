import {
  addDays,
  nextSchoolDay,
  parseSchoolDay,
  type SchoolCalendar,
  type SchoolDay,
} from '../calendar/school-day.ts';

/** How long after its end a month can still be looked back on, in days (our choice, no source). */
const GRACE_DAYS = 7;

/** A month by its first and last day. */
export interface Month {
  readonly first: SchoolDay;
  readonly last: SchoolDay;
}

/**
 * The month of a day.
 *
 * @example
 * monthOfDay(day); // { first: '2026-02-01', last: '2026-02-28' } for '2026-02-11'
 */
export function monthOfDay(day: SchoolDay): Month {
  const first = firstOf(day);
  return { first, last: addDays(firstOf(addDays(first, 31)), -1) };
}

/**
 * The month that an evening practised on a day closes: its own on the month's last school day and after it, the one before in
 * the first seven days of the next; null on any other day. So whoever misses the last evening is shown the month with the
 * first evening of the next.
 *
 * @example
 * monthDue(lastFriday, calendar)?.first; // '2026-10-01' for '2026-10-30' with school from Monday to Friday
 */
export function monthDue(day: SchoolDay, calendar: SchoolCalendar): Month | null {
  const month = monthOfDay(day);
  const next = nextSchoolDay(day, calendar);
  if (next === null || next > month.last) return month;
  const isEarly = day < addDays(month.first, GRACE_DAYS);
  // A month whose only school days are its first week is closed by its own last one, above.
  return isEarly ? monthOfDay(addDays(month.first, -1)) : null;
}

/** Breaks of this length and longer part two terms: shorter ones lie within one (our choice, no source). */
const TERM_BREAK_DAYS = 10;

/**
 * The first day of the term that a day lies in: the one after the latest break of ten days or more that is over, holidays
 * counted from the first day to the last with their weekends. Null when there is none: then nothing parts the days before.
 *
 * @example
 * termStart(day, []); // null
 */
export function termStart(day: SchoolDay, breaks: SchoolCalendar['breaks']): SchoolDay | null {
  const starts = breaks
    .filter(({ first, last }) => last < day && addDays(first, TERM_BREAK_DAYS - 1) <= last)
    .map(({ last }) => addDays(last, 1))
    .sort();
  return starts.at(-1) ?? null;
}

function firstOf(day: SchoolDay): SchoolDay {
  const first = parseSchoolDay(`${day.slice(0, 8)}01`);
  if (first === null) throw new RangeError(`${day} is no day of the calendar`);
  return first;
}
