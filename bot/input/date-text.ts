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

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const LONG_MONTHS =
  'january february march april may june july august september october november december'.split(
    ' ',
  );
const WEEKDAYS = 'mon tue wed thu fri sat sun'.split(' ');
const MONTH = `(?<month>${LONG_MONTHS.join('|')}|sept|${MONTHS.join('|')})\\b\\.?`;
const WEEKDAY = `(?:(?<weekday>${WEEKDAYS.join('|')})(?:day|sday|nesday|rsday|urday|s|rs|r)?\\b[.,]?\\s+(?:the\\s+)?)?`;
const DAY = String.raw`(?<day>\d{1,2})(?:st|nd|rd|th)?\b`;
const YEAR = String.raw`(?<year>\d{4})\b`;

/** Every way to write a date that we read; the first that fits is taken. */
const SHAPES: readonly RegExp[] = [
  // 2026-10-12, as ISO 8601 has it
  new RegExp(`^${WEEKDAY}${YEAR}-(?<number>\\d{1,2})-(?<day>\\d{1,2})\\b`, 'i'),
  // 12 October 2026, 12th of Oct
  new RegExp(`^${WEEKDAY}${DAY}\\.?\\s*(?:of\\s+)?${MONTH}(?:,?\\s+${YEAR})?`, 'i'),
  // October 12, 2026
  new RegExp(`^${WEEKDAY}${MONTH}\\s*${DAY}(?:,?\\s+${YEAR})?`, 'i'),
  // 24.12.2026, 24.12. : the day comes first wherever dots are used
  new RegExp(
    `^${WEEKDAY}(?<day>\\d{1,2})\\.\\s?(?<number>\\d{1,2})(?:\\.\\s?${YEAR}|\\.|\\b)`,
    'i',
  ),
  // 25/12/2026: which is the day is open unless one of the two is over 12
  new RegExp(`^${WEEKDAY}(?<one>\\d{1,2})/(?<other>\\d{1,2})(?:/${YEAR}|\\b)`, 'i'),
];

/**
 * Reads the date that a text begins with; null when it begins with none. The day may be one that the month does not have.
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
  const match = new RegExp(`^${WEEKDAY}${DAY}\\.?`, 'i').exec(text);
  if (!match) return null;
  const { day, weekday } = match.groups ?? {};
  return { day: Number(day), weekday: weekdayOf(weekday), rest: text.slice(match[0].length) };
}

function dateOf(found: Readonly<Record<string, string | undefined>>): Omit<FoundDate, 'rest'> {
  const { year, month, number, day, one, other, weekday } = found;
  const rest = { year: year ? Number(year) : null, weekday: weekdayOf(weekday) };
  if (one !== undefined) {
    const [first, second] = [Number(one), Number(other)];
    const isMonthFirst = second > 12 && first <= 12;
    const [d, m] = isMonthFirst ? [second, first] : [first, second];
    const slashed = first <= 12 && second <= 12 && first !== second;
    return { date: { ...rest, day: d, month: m }, slashed };
  }
  const at = month ? MONTHS.indexOf(month.slice(0, 3).toLowerCase()) + 1 : Number(number);
  return { date: { ...rest, day: Number(day), month: at }, slashed: false };
}

function weekdayOf(text: string | undefined): number | null {
  return text === undefined ? null : WEEKDAYS.indexOf(text.slice(0, 3).toLowerCase()) + 1;
}
