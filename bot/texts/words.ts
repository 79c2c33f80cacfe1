import { FormattedString } from '@grammyjs/parse-mode';
import { type SchoolDay, WEEKDAYS, type Weekday } from '../../drills/index.ts';

/** Text with its bold parts kept beside it as entities, so that no name can ever turn into markup. */
export type Text = FormattedString;

const LANGUAGE = 'en-GB';
const joiner = new Intl.ListFormat(LANGUAGE, { style: 'long', type: 'conjunction' });
// The blocks Unicode sets aside for scripts written from right to left.
const UTC = { timeZone: 'UTC' } as const;
const LONG_DAY = new Intl.DateTimeFormat(LANGUAGE, { ...UTC, weekday: 'long' });
const SHORT_DAY = new Intl.DateTimeFormat(LANGUAGE, { ...UTC, weekday: 'short' });
const SHORT_DATE = new Intl.DateTimeFormat(LANGUAGE, {
  ...UTC,
  weekday: 'short',
  day: 'numeric',
  month: 'short',
});
const DAY_AND_MONTH = new Intl.DateTimeFormat(LANGUAGE, { ...UTC, day: 'numeric', month: 'short' });
const RIGHT_TO_LEFT =
  /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/**
 * The one place through which names and other people's words enter a text. Right-to-left names are isolated, so that they do
 * not turn round the numbers beside them.
 */
export function name(text: string): string {
  return RIGHT_TO_LEFT.test(text) ? `\u2068${text}\u2069` : text;
}

/** Bold text. */
export function bold(text: string): Text {
  return FormattedString.b(text);
}

/** Lines under each other; null ones are left out. */
export function lines(...parts: readonly (Text | string | null)[]): Text {
  return FormattedString.join(
    parts.filter((part) => part !== null),
    '\n',
  );
}

/**
 * A list as people say it.
 *
 * @example
 * listOf(['doubles', 'halves', 'clock']); // 'doubles, halves and clock'
 */
export function listOf(items: readonly string[]): string {
  return joiner.format(items);
}

/**
 * A count with its noun.
 *
 * @example
 * count(1, 'page', 'pages'); // '1 page'
 */
export function count(n: number, one: string, many: string): string {
  return `${n} ${n === 1 ? one : many}`;
}

/** The weekday of a school day: `Tuesday`. */
export function dayName(day: SchoolDay): string {
  return LONG_DAY.format(midnight(day));
}

/** A short date: `Tue 15 Sept`. */
export function shortDate(day: SchoolDay): string {
  return SHORT_DATE.format(midnight(day));
}

/** A date without its weekday, where there is little room: `15 Sept`. */
export function dayAndMonth(day: SchoolDay): string {
  return DAY_AND_MONTH.format(midnight(day));
}

/**
 * School days from the first to the last.
 *
 * @example
 * dayRange(monday, friday); // 'Mon 14 Sept to Fri 18 Sept'
 */
export function dayRange(first: SchoolDay, last: SchoolDay): string {
  return first === last ? shortDate(first) : `${shortDate(first)} to ${shortDate(last)}`;
}

/** A weekday by its ISO number: `Mon` or `Monday`. */
export function weekdayName(weekday: Weekday, style: 'short' | 'long'): string {
  // 2024-01-01 was a Monday.
  return (style === 'long' ? LONG_DAY : SHORT_DAY).format(new Date(Date.UTC(2024, 0, weekday)));
}

/**
 * School days in the fewest words.
 *
 * @example
 * weekdayRange([1, 2, 3, 4, 5]); // 'Mon to Fri'
 * weekdayRange([1, 3]); // 'Mon and Wed'
 */
export function weekdayRange(weekdays: readonly Weekday[]): string {
  const chosen = WEEKDAYS.filter((weekday) => weekdays.includes(weekday));
  const [first, last] = [chosen.at(0), chosen.at(-1)];
  if (first && last && chosen.length > 2 && last - first === chosen.length - 1) {
    return `${weekdayName(first, 'short')} to ${weekdayName(last, 'short')}`;
  }
  return listOf(chosen.map((weekday) => weekdayName(weekday, 'short')));
}

/**
 * Pages as people say them.
 *
 * @example
 * pageRange(14, 15); // 'pages 14 and 15'
 */
export function pageRange(from: number, to: number): string {
  if (from === to) return `page ${from}`;
  return to === from + 1 ? `pages ${from} and ${to}` : `pages ${from} to ${to}`;
}

/** A school day has no time; midnight UTC stands for it, and is only ever read in UTC. */
function midnight(day: SchoolDay): Date {
  return new Date(`${day}T00:00:00Z`);
}
