import type { ClassBreak, SchoolClass } from '../../db/index.ts';
import { type SchoolDay, weekdayOf } from '../../drills/index.ts';
import { quote, shorten } from './quote.ts';
import {
  bold,
  count,
  dayAndMonth,
  dayName,
  lines,
  name,
  shortDate,
  type Text,
  weekdayRange,
} from './words.ts';

/** Characters of a break's title that are shown: enough to know it by, and short enough for a button. */
const TITLE_LENGTH = 30;
/** So that a holiday's name and its date fit on a button. */
const HOLIDAY_LENGTH = 26;

/** How a break is typed. */
export const ASK_BREAK =
  'Send the days and a name. For example: 12 Oct to 16 Oct Half term\nOne day is enough too: 4 Sep Sports day';

/** One page of the breaks ahead. */
export function breakList(
  schoolClass: SchoolClass,
  breaks: readonly ClassBreak[],
  { page, pages }: { page: number; pages: number } = { page: 0, pages: 1 },
): Text {
  const where = pages > 1 ? `, page ${page + 1} of ${pages}` : '';
  return lines(
    bold(`${name(schoolClass.title)}: breaks${where}`),
    ...breaks.map((each) => `${shorten(each.title, TITLE_LENGTH)}: ${span(each)}`),
    breaks.length === 0
      ? 'None ahead. On a break’s days nothing goes out.'
      : 'Tap a break to remove it.',
  );
}

/** A break's button, which removes it. */
export function breakButton({ title, first }: ClassBreak): string {
  return `✗ ${shorten(title, TITLE_LENGTH)}, ${shortDate(first)}`;
}

function span({ first, last }: Pick<ClassBreak, 'first' | 'last'>): string {
  return first === last ? shortDate(first) : `${shortDate(first)} to ${shortDate(last)}`;
}

/** A break read back in words. `days` are the school days it takes, `isOver` says that its last day has passed,
 * `isToday` that it has begun. */
export function breakAdded(
  each: ClassBreak,
  days: readonly SchoolDay[],
  { isOver, isToday, isNew }: { isOver: boolean; isToday: boolean; isNew: boolean },
): Text {
  return lines(
    bold(`${shorten(each.title, TITLE_LENGTH)}: ${span(each)} ${each.last.slice(0, 4)}`),
    taken(days),
    isOver ? 'That is over already: only the digest and reports count it.' : null,
    isToday ? 'A drill that went out today already stays.' : null,
    isNew ? null : 'It was there already; nothing was added.',
  );
}

function taken(days: readonly SchoolDay[]): string {
  const [first] = days;
  if (!first) return 'No school day of this class is in it, so it changes nothing.';
  if (days.length === 1) return `One school day, a ${dayName(first)}. Nothing goes out on it.`;
  const weekdays = [...new Set(days.map(weekdayOf))];
  return `${days.length} school days, ${weekdayRange(weekdays)}. Nothing goes out on them.`;
}

/** A break was removed. */
export function breakRemoved({ title }: ClassBreak): string {
  return `${shorten(title, TITLE_LENGTH)} removed.`;
}

/** A break that could not be read; `value` is as in the problem. */
export function badBreak(
  problem: 'shape' | 'date' | 'slash' | 'order' | 'long' | 'weekday',
  value: string,
  day: SchoolDay | null,
): Text {
  const because = {
    shape: `I could not read ${quote(value)} as one break.`,
    date: `${quote(value)} is not a date in the calendar.`,
    slash: `${quote(value)} could be two dates. Please write the month as a word, like 3 April.`,
    order: `${quote(value)}: the last day comes before the first.`,
    long: `${value} days are too long for a break, at most 120.`,
    weekday: day
      ? `${dayAndMonth(day)} ${day.slice(0, 4)} is a ${dayName(day)}. Please send the break again with the right day.`
      : '',
  }[problem];
  return lines(because, ASK_BREAK);
}

/** The public holidays that can be taken over. `chosen` of `of` are ticked. */
export function holidayList(
  schoolClass: SchoolClass,
  { place, of, chosen, page, pages }: HolidayWords,
): Text {
  return lines(
    bold(`${name(schoolClass.title)}: public holidays`),
    `${place}, the next twelve months, school days only.`,
    of === 0
      ? 'None that is not in your breaks already.'
      : `${chosen} of ${of} ticked. Tap one to leave it out, or to take it in again.`,
    'Please compare with your school’s own calendar: days can be moved by law at short notice.',
    pages > 1 ? `Page ${page + 1} of ${pages}` : null,
  );
}

/** What stands over a list of holidays. */
export interface HolidayWords {
  readonly place: string;
  readonly of: number;
  readonly chosen: number;
  readonly page: number;
  readonly pages: number;
}

/** A holiday's button, ticked or not: a sign, not a colour. */
export function holidayButton(day: SchoolDay, title: string, isChosen: boolean): string {
  return `${isChosen ? '✓' : '▫'} ${shortDate(day)} · ${shorten(title, HOLIDAY_LENGTH)}`;
}

/** Adds what is ticked. */
export function addHolidaysButton(chosen: number): string {
  return `Add ${chosen === 1 ? 'this one' : `these ${chosen}`}`;
}

/** After public holidays were added. */
export function holidaysAdded(added: number): string {
  return added === 0
    ? 'They were there already; nothing was added.'
    : `${count(added, 'holiday', 'holidays')} added.`;
}

/** Choosing a country, or a region of one. */
export function choosePlace(country: string | null, page: number, pages: number): Text {
  return lines(
    bold(country === null ? 'Whose public holidays?' : `${country}: which region?`),
    country === null
      ? 'Choose the country of the school.'
      : 'Some holidays are kept in a region only.',
    pages > 1 ? `Page ${page + 1} of ${pages}, in the order of the alphabet.` : null,
  );
}
