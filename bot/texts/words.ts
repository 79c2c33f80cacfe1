import { FormattedString } from '@grammyjs/parse-mode';
import { type Language, type SchoolDay, WEEKDAYS, type Weekday } from '../../drills/index.ts';
import { localeOf, readerLanguage, say } from '../language/index.ts';

/** Text with its bold parts kept beside it as entities, so that no name can ever turn into markup. */
export type Text = FormattedString;

// The blocks Unicode sets aside for scripts written from right to left.
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
  return formats().list.format(items);
}

/** The weekday of a school day: `Tuesday`. */
export function dayName(day: SchoolDay): string {
  return formats().longDay.format(midnight(day));
}

/** A short date: `Tue 15 Sept`. */
export function shortDate(day: SchoolDay): string {
  return bare(formats().shortDate.format(midnight(day)));
}

/** A date without its weekday, where there is little room: `15 Sept`. */
export function dayAndMonth(day: SchoolDay): string {
  return bare(formats().dayAndMonth.format(midnight(day)));
}

/**
 * School days from the first to the last.
 *
 * @example
 * dayRange(monday, friday); // 'Mon 14 Sept to Fri 18 Sept'
 */
export function dayRange(first: SchoolDay, last: SchoolDay): string {
  if (first === last) return shortDate(first);
  return say('words-days', { first: shortDate(first), last: shortDate(last) });
}

/** A weekday by its ISO number: `Mon` or `Monday`. */
export function weekdayName(weekday: Weekday, style: 'short' | 'long'): string {
  const { longDay, shortDay } = formats();
  // 2024-01-01 was a Monday.
  return bare((style === 'long' ? longDay : shortDay).format(new Date(Date.UTC(2024, 0, weekday))));
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
    return say('words-weekdays', {
      from: weekdayName(first, 'short'),
      to: weekdayName(last, 'short'),
    });
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
  if (from === to) return say('words-page', { page: from });
  return to === from + 1
    ? say('words-two-pages', { first: from, second: to })
    : say('words-pages', { from, to });
}

/** A school day has no time; midnight UTC stands for it, and is only ever read in UTC. */
function midnight(day: SchoolDay): Date {
  return new Date(`${day}T00:00:00Z`);
}

/**
 * A date as a timetable has it: no comma, no point behind what is shortened, so that a sentence may end with it. The point
 * behind a German day of the month stays, and the first of a month is the 1er in French.
 */
function bare(date: string): string {
  const short = date.replaceAll(/,|(?<=\p{L})\./gu, '');
  return readerLanguage() === 'fr' ? short.replace(/\b1(?= \p{L})/u, '1er') : short;
}

interface Formats {
  readonly list: Intl.ListFormat;
  readonly longDay: Intl.DateTimeFormat;
  readonly shortDay: Intl.DateTimeFormat;
  readonly shortDate: Intl.DateTimeFormat;
  readonly dayAndMonth: Intl.DateTimeFormat;
}

const made = new Map<Language, Formats>();

/** How the reader's language writes dates and lists; made once a language, because making them is slow. */
function formats(): Formats {
  const language = readerLanguage();
  const known = made.get(language);
  if (known) return known;
  const locale = localeOf(language);
  const date = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' });
  const fresh = {
    list: new Intl.ListFormat(locale, { style: 'long', type: 'conjunction' }),
    longDay: date({ weekday: 'long' }),
    shortDay: date({ weekday: 'short' }),
    shortDate: date({ weekday: 'short', day: 'numeric', month: 'short' }),
    dayAndMonth: date({ day: 'numeric', month: 'short' }),
  };
  made.set(language, fresh);
  return fresh;
}
