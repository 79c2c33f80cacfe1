import {
  type Break,
  daysBetween,
  parseSchoolDay,
  type SchoolDay,
  weekdayOf,
} from '../../drills/index.ts';
import { localeOf, readerLanguage, say } from '../language/index.ts';
import { readDate, readDayOnly, type WrittenDate } from './date-text.ts';
import { MONTH_WORDS, WEEKDAY_WORDS } from './date-words.ts';

/**
 * Why a break could not be read. `value` is what to show back: the whole line for `shape`, the date as it was typed for `date`
 * and `slash`, the earlier last day for `order`, the number of days for `long`, the day that it really is for `weekday`.
 */
export interface BreakProblem {
  readonly problem: 'shape' | 'date' | 'slash' | 'order' | 'long' | 'weekday';
  readonly value: string;
}

/** A break as read from one line, or why it could not be read. */
export type ParsedBreak = { readonly break: Break; readonly title: string } | BreakProblem;

/** Longer than any school holiday, and shorter than what a mistyped year gives. Common practice, no source. */
export const LONGEST_BREAK_DAYS = 120;
/** Between two dates, in any of our languages. A Spanish "a" only before a whole date: it begins an English name as well. */
const UNTIL_WORDS = String.raw`(?:to|till|until|through|tot en met|tot|t/m|bis zum|bis|al|hasta el|hasta|au|jusqu['’]au)(?!\p{L})|a(?=\s+\d{1,2}\s+(?:de\s+)?(?:${MONTH_WORDS})(?!\p{L}))`;
const UNTIL = new RegExp(String.raw`^\s*(?:${UNTIL_WORDS}|-|–|—)\s*`, 'iu');
/** What is left of a range whose second date could not be read. */
const HALF_A_RANGE = new RegExp(
  String.raw`^\s*(?:(?:${UNTIL_WORDS})(?:\s+(?:\d|(?:${WEEKDAY_WORDS})(?!\p{L}))|\s*$)|[-–—]\s*\d)`,
  'iu',
);
/** The year after both days, as in October 12-16, 2026. */
const TRAILING_YEAR = /^,?\s+(?<year>\d{4})\b/;
const LEAP_CYCLE = 8;

interface Range {
  readonly first: WrittenDate;
  readonly last: WrittenDate;
  readonly rest: string;
  /** A date that could be read two ways, as it was typed. */
  readonly slashed: string | null;
}

/**
 * Reads a break from one line: a date, or two with a dash or "to" between them, and a name before or after. Dates are written
 * as in `12 Oct`, `October 12`, `2026-10-12` or `24.12.`, with or without weekday and year; words in any of our five languages,
 * whatever the reader's is. Without a name it is called a break in the reader's language. Without a year it is the next such
 * date: a range that is running on `today` is the running one. `3/4` could be two dates and is refused, `25/12` could not.
 * A break of more than 120 days is refused, because it is nearly always a mistyped year.
 *
 * @example
 * parseBreak('12-16 October Half term', today);
 * // { break: { first: '2026-10-12', last: '2026-10-16' }, title: 'Half term' }
 */
export function parseBreak(text: string, today: SchoolDay): ParsedBreak {
  const line = text.trim().replaceAll(/\s+/g, ' ');
  const found = readAnywhere(line);
  if (!found) return { problem: 'shape', value: line };
  const { first, last, slashed, title } = found;
  if (slashed !== null) return { problem: 'slash', value: slashed };
  const days = placed(first, last, today);
  if ('problem' in days) return days;
  const wrong = wrongWeekday(first, days.first) ?? wrongWeekday(last, days.last);
  return wrong ?? { break: days, title: title || say('breaks-untitled') };
}

/** A range at the beginning of the line, or at its end with its name before it. */
function readAnywhere(line: string): (Range & { title: string }) | null {
  const leading = readRange(line);
  if (leading) {
    const title = leading.rest.replace(/^[\s:,;–—-]+/, '');
    // Two dates with nothing between them: a range, or two breaks? Better asked than guessed.
    return readDate(title) || readRange(title) ? null : { ...leading, title };
  }
  for (const { index } of line.matchAll(/(?<=[\s:,(])(?=\S)/g)) {
    const range = readRange(line.slice(index));
    const title = line.slice(0, index).replace(/[\s:,(–—-]+$/, '');
    if (range && /^[\s).]*$/.test(range.rest))
      return { ...range, title: title.replace(/\s(?:on|from|am|vom|op|van|le|du|el|del)$/iu, '') };
  }
  return null;
}

function readRange(text: string): Range | null {
  const short = readDayOnly(text);
  const start = namesTwoWeekdays(short) ? null : readDate(text);
  if (start) {
    const slashed = start.slashed ? text.slice(0, text.length - start.rest.length) : null;
    const next = start.rest.replace(UNTIL, '');
    const end = next === start.rest ? null : readEnd(next, start.date);
    if (end) return { first: start.date, ...end, slashed: slashed ?? end.slashed };
    const isCut = HALF_A_RANGE.test(start.rest) || /^[\p{L}\p{N}]/u.test(start.rest);
    return isCut ? null : { first: start.date, last: start.date, rest: start.rest, slashed };
  }
  // 12 to 16 October: the month stands once, behind both.
  if (!short || !UNTIL.test(short.rest)) return null;
  const end = readDate(short.rest.replace(UNTIL, ''));
  if (!end || /^[\p{L}\p{N}]/u.test(end.rest)) return null;
  const { day, weekday } = short;
  const first = { day, weekday, month: end.date.month, year: end.date.year };
  return {
    first,
    last: end.date,
    rest: end.rest,
    slashed: end.slashed ? short.rest.replace(UNTIL, '') : null,
  };
}

/**
 * Mon 12 to Fri 16 October. What begins with "mar" and goes on like this is a martes or mardi, not March: were it March after all,
 * the weekday would not fit its date and the break would be refused.
 */
function namesTwoWeekdays(short: ReturnType<typeof readDayOnly>): boolean {
  if (!short || short.weekday === null || !UNTIL.test(short.rest)) return false;
  return (readDate(short.rest.replace(UNTIL, ''))?.date.weekday ?? null) !== null;
}

/** The last day: a date of its own, or a day of the month that the first is in, as in October 12-16. */
function readEnd(text: string, first: WrittenDate): Omit<Range, 'first'> | null {
  const end = readDate(text);
  if (end && !/^[\p{L}\p{N}]/u.test(end.rest)) {
    return { last: end.date, rest: end.rest, slashed: end.slashed ? text : null };
  }
  const short = readDayOnly(text);
  if (!short || !/^(?:$|[\s:,;–—-])/.test(short.rest)) return null;
  const { day, weekday, rest } = short;
  const year = first.year === null ? TRAILING_YEAR.exec(rest) : null;
  const last = { ...first, day, weekday, year: year ? Number(year.groups?.year) : first.year };
  return { last, rest: rest.slice(year?.[0].length ?? 0), slashed: null };
}

/** Puts two written dates into the calendar. */
function placed(first: WrittenDate, last: WrittenDate, today: SchoolDay): Break | BreakProblem {
  const end =
    last.year === null
      ? upcoming(last, first.year === null ? today : null, first)
      : exact(last, last.year);
  if (!end) return { problem: 'date', value: spelled(last) };
  const start = first.year === null ? latest(first, end) : exact(first, first.year);
  if (!start) return { problem: 'date', value: spelled(first) };
  const isTurned =
    first.year === null && last.year === null && daysBetween(start, end) + 1 > LONGEST_BREAK_DAYS;
  if (end < start || isTurned) return { problem: 'order', value: spelled(last) };
  const days = daysBetween(start, end) + 1;
  if (days > LONGEST_BREAK_DAYS) return { problem: 'long', value: String(days) };
  return { first: start, last: end };
}

/** The next such date from `today` on; without a today, from the first day's own year on. */
function upcoming(
  date: WrittenDate,
  today: SchoolDay | null,
  first: WrittenDate,
): SchoolDay | null {
  const from = today ?? (first.year === null ? null : exact(first, first.year));
  if (!from) return null;
  const year = Number(from.slice(0, 4));
  for (let ahead = 0; ahead <= LEAP_CYCLE; ahead += 1) {
    const day = exact(date, year + ahead);
    if (day && day >= from) return day;
  }
  return null;
}

/** The latest such date that is not after `end`. */
function latest(date: WrittenDate, end: SchoolDay): SchoolDay | null {
  const year = Number(end.slice(0, 4));
  for (let back = 0; back <= LEAP_CYCLE; back += 1) {
    const day = exact(date, year - back);
    if (day && day <= end) return day;
  }
  return null;
}

function exact({ month, day }: WrittenDate, year: number): SchoolDay | null {
  const two = (value: number) => String(value).padStart(2, '0');
  return parseSchoolDay(`${String(year).padStart(4, '0')}-${two(month)}-${two(day)}`);
}

function wrongWeekday({ weekday }: WrittenDate, day: SchoolDay): BreakProblem | null {
  return weekday === null || weekdayOf(day) === weekday ? null : { problem: 'weekday', value: day };
}

function spelled({ year, month, day }: WrittenDate): string {
  if (month < 1 || month > 12) return `${day}.${month}.${year ?? ''}`;
  const format = new Intl.DateTimeFormat(localeOf(readerLanguage()), {
    month: 'short',
    timeZone: 'UTC',
  });
  const word = format.format(Date.UTC(2024, month - 1, 1)).replace('.', '');
  return year === null
    ? say('breaks-date', { day, month: word })
    : say('breaks-date-year', { day, month: word, year: String(year) });
}
