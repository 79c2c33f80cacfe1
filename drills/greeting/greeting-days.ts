import {
  addDays,
  nextSchoolDay,
  parseSchoolDay,
  type SchoolCalendar,
  type SchoolDay,
  weekdayOf,
} from '../calendar/school-day.ts';

/** When a greeting goes out: from its first to its last day, with a family's first evening of each week or with every one. */
export interface GreetingTimes {
  readonly evenings: 'first' | 'every';
  readonly first: SchoolDay;
  readonly last: SchoolDay;
}

/** Both ends belong to it. */
export type GreetingDays = Pick<GreetingTimes, 'first' | 'last'>;

/** The days a greeting can be given, seen from a day of school. A calendar without school days ahead has none of them. */
export interface GreetingChoices {
  /** The week of the next evening, from that evening on. */
  readonly thisWeek: GreetingDays;
  /** The next week after it that has a school day. */
  readonly nextWeek: GreetingDays | null;
  /** From the next evening on, without an end. */
  readonly kept: GreetingDays;
}

/** The last date there is: a greeting that is kept until somebody removes it. */
export const NO_LAST_DAY = lastDate();

/**
 * The days that can be chosen for a greeting; `next` is the school day whose evening comes next. Weeks run from Monday to
 * Sunday, as in ISO 8601; weeks without school days are passed over.
 *
 * @example
 * greetingChoices(wednesday, calendar).thisWeek; // { first: wednesday, last: the Sunday after it }
 */
export function greetingChoices(next: SchoolDay, calendar: SchoolCalendar): GreetingChoices {
  const sunday = sundayOf(next);
  const after = nextSchoolDay(sunday, calendar);
  return {
    thisWeek: { first: next, last: sunday },
    nextWeek: after ? { first: after, last: sundayOf(after) } : null,
    kept: { first: next, last: NO_LAST_DAY },
  };
}

/**
 * What a new greeting is given: this week while a school day of it comes after the next evening, else next week. A greeting
 * recorded on the week's last school day is meant for the week to come (our choice, no source).
 *
 * @example
 * usualDays(friday, calendar).first; // the Monday after it
 */
export function usualDays(next: SchoolDay, calendar: SchoolCalendar): GreetingDays {
  const { thisWeek, nextWeek } = greetingChoices(next, calendar);
  const following = nextSchoolDay(next, calendar);
  const isLast = following === null || following > thisWeek.last;
  // A week of one school day is that day's own week.
  const isOnly = isLast && firstOf(next, calendar) === next;
  return isLast && !isOnly && nextWeek ? nextWeek : thisWeek;
}

/**
 * Whether a family gets the greeting before its evening of `day`. `lastGot` is the latest day before on which it got one from
 * this class, null when never. A greeting for first evenings goes out once a week, with whichever evening is the family's
 * first: who joins on Wednesday, or whose Monday was lost, gets it then.
 *
 * @example
 * isGreetingDue({ evenings: 'first', first: monday, last: sunday }, tuesday, monday); // false
 */
export function isGreetingDue(
  times: GreetingTimes,
  day: SchoolDay,
  lastGot: SchoolDay | null,
): boolean {
  const { evenings, first, last } = times;
  if (day < first || day > last) return false;
  if (evenings === 'every' || lastGot === null) return true;
  return lastGot < first || lastGot < mondayOf(day);
}

function firstOf(day: SchoolDay, calendar: SchoolCalendar): SchoolDay | null {
  return nextSchoolDay(addDays(mondayOf(day), -1), calendar);
}

function mondayOf(day: SchoolDay): SchoolDay {
  return addDays(day, 1 - weekdayOf(day));
}

function sundayOf(day: SchoolDay): SchoolDay {
  return addDays(day, 7 - weekdayOf(day));
}

function lastDate(): SchoolDay {
  const day = parseSchoolDay('9999-12-31');
  if (day === null) throw new TypeError('the calendar has lost its last date');
  return day;
}
