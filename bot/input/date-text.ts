import { MONTH_WORDS, monthOf, WEEKDAY_WORDS, weekdayOf } from './date-words.ts';

/** A date as it was written: the year and the weekday only where they were. Months and days count from 1, Monday is 1. */
export interface WrittenDate {
  readonly year: number | null;
  readonly month: number;
  readonly day: number;
  readonly weekday: number | null;
}

/** A date at the beginning of a text, and what follows it. `slashed` says that day and month could be either way round. */
export interface FoundDate {
  readonly date: WrittenDate;
  readonly rest: string;
  readonly slashed: boolean;
}

const WORD_ENDS = String.raw`(?![\p{L}\p{N}_])`;
const MONTH = `(?<month>${MONTH_WORDS})${WORD_ENDS}\\.?`;
/** What may stand before a date: on Monday the, am, le, del. */
const BEFORE = String.raw`(?:(?:from|on|vom|am|van|op|du|le|del|desde|el)\s+(?:el\s+)?)?`;
const WEEKDAY = String.raw`${BEFORE}(?:(?<weekday>${WEEKDAY_WORDS})${WORD_ENDS}[.,]{0,2}\s+(?:(?:the|den|die|el|le)\s+)?)?`;
const DAY = String.raw`(?<day>\d{1,2})(?:st|nd|rd|th|ste|de|er|\.?º)?${WORD_ENDS}`;
const YEAR = String.raw`(?<year>\d{4})\b`;

/** Every way to write a date that we read; the first that fits is taken. Months and weekdays as in {@link monthOf}. */
const SHAPES: readonly RegExp[] = [
  // 2026-10-12, as ISO 8601 has it
  new RegExp(`^${WEEKDAY}${YEAR}-(?<number>\\d{1,2})-(?<day>\\d{1,2})\\b`, 'iu'),
  // 12 October 2026, 12th of Oct, 12 de octubre de 2026, 12. Okt.
  new RegExp(
    `^${WEEKDAY}${DAY}\\.?\\s*(?:(?:of|de)\\s+)?${MONTH}(?:,?\\s+(?:del?\\s+)?${YEAR})?`,
    'iu',
  ),
  // October 12, 2026
  new RegExp(`^${WEEKDAY}${MONTH}\\s*${DAY}(?:,?\\s+${YEAR})?`, 'iu'),
  // 24.12.2026, 24.12. : the day comes first wherever dots are used
  new RegExp(
    `^${WEEKDAY}(?<day>\\d{1,2})\\.\\s?(?<number>\\d{1,2})(?:\\.\\s?${YEAR}|\\.|\\b)`,
    'iu',
  ),
  // 25/12/2026: which is the day is open unless one of the two is over 12
  new RegExp(`^${WEEKDAY}(?<one>\\d{1,2})/(?<other>\\d{1,2})(?:/${YEAR}|\\b)`, 'iu'),
];

/**
 * Reads the date that a text begins with, its words in any of our languages; null when it begins with none. The day may be one
 * that the month does not have.
 *
 * @example
 * readDate('Fri 4 Sep: fair'); // { date: { year: null, month: 9, day: 4, weekday: 5 }, rest: ': fair', slashed: false }
 */
export function readDate(text: string): FoundDate | null {
  for (const shape of SHAPES) {
    const match = shape.exec(text);
    if (match) return { ...dateOf(match.groups ?? {}), rest: text.slice(match[0].length) };
  }
  return null;
}

/**
 * Reads a day without its month, for the first half of `12 to 16 October`; null when there is none.
 *
 * @example
 * readDayOnly('Mon 12 to 16 October'); // { day: 12, weekday: 1, rest: ' to 16 October' }
 */
export function readDayOnly(
  text: string,
): { readonly day: number; readonly weekday: number | null; readonly rest: string } | null {
  const match = new RegExp(`^${WEEKDAY}${DAY}\\.?`, 'iu').exec(text);
  if (!match) return null;
  const { day, weekday } = match.groups ?? {};
  return { day: Number(day), weekday: numberOf(weekday), rest: text.slice(match[0].length) };
}

function dateOf(found: Readonly<Record<string, string | undefined>>): Omit<FoundDate, 'rest'> {
  const { year, month, number, day, one, other, weekday } = found;
  const rest = { year: year ? Number(year) : null, weekday: numberOf(weekday) };
  if (one !== undefined) {
    const [first, second] = [Number(one), Number(other)];
    const isMonthFirst = second > 12 && first <= 12;
    const [d, m] = isMonthFirst ? [second, first] : [first, second];
    const slashed = first <= 12 && second <= 12 && first !== second;
    return { date: { ...rest, day: d, month: m }, slashed };
  }
  const at = month === undefined ? null : monthOf(month);
  return { date: { ...rest, day: Number(day), month: at ?? Number(number) }, slashed: false };
}

function numberOf(weekday: string | undefined): number | null {
  return weekday === undefined ? null : weekdayOf(weekday);
}
