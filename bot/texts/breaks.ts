import type { ClassBreak, SchoolClass } from '../../db/index.ts';
import { type SchoolDay, weekdayOf } from '../../drills/index.ts';
import { LONGEST_BREAK_DAYS } from '../input/break-text.ts';
import { say } from '../language/index.ts';
import { quote, shorten } from './quote.ts';
import {
  bold,
  dayAndMonth,
  dayName,
  dayRange,
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
export function askBreak(): string {
  return `${say('breaks-how')}\n${say('breaks-one-day')}`;
}

/** One page of the breaks ahead. */
export function breakList(
  schoolClass: SchoolClass,
  breaks: readonly ClassBreak[],
  { page, pages }: { page: number; pages: number } = { page: 0, pages: 1 },
): Text {
  const title = name(schoolClass.title);
  return lines(
    bold(
      pages > 1
        ? say('breaks-list-page', { class: title, page: page + 1, pages })
        : say('breaks-list', { class: title }),
    ),
    ...breaks.map((each) => say('breaks-line', titledSpan(each))),
    say(breaks.length === 0 ? 'breaks-none' : 'breaks-tap-to-remove'),
  );
}

/** A break's button, which removes it. */
export function breakButton({ title, first }: ClassBreak): string {
  return say('breaks-button', { title: shorten(title, TITLE_LENGTH), day: shortDate(first) });
}

function titledSpan({ title, first, last }: ClassBreak): { title: string; days: string } {
  return { title: shorten(title, TITLE_LENGTH), days: dayRange(first, last) };
}

/** A break read back in words. `days` are the school days it takes, `isOver` says that its last day has passed,
 * `isToday` that it has begun. */
export function breakAdded(
  each: ClassBreak,
  days: readonly SchoolDay[],
  { isOver, isToday, isNew }: { isOver: boolean; isToday: boolean; isNew: boolean },
): Text {
  return lines(
    bold(say('breaks-added', { ...titledSpan(each), year: each.last.slice(0, 4) })),
    taken(days),
    isOver ? say('breaks-over') : null,
    isToday ? say('breaks-today-stays') : null,
    isNew ? null : say('breaks-there-already'),
  );
}

function taken(days: readonly SchoolDay[]): string {
  const [first] = days;
  if (!first) return say('breaks-no-school-day');
  if (days.length === 1) return say('breaks-one-school-day', { weekday: dayName(first) });
  const weekdays = weekdayRange([...new Set(days.map(weekdayOf))]);
  return say('breaks-school-days', { days: days.length, weekdays });
}

/** A break was removed. */
export function breakRemoved({ title }: ClassBreak): string {
  return say('breaks-removed', { title: shorten(title, TITLE_LENGTH) });
}

/** A break that could not be read; `value` is as in the problem. */
export function badBreak(
  problem: 'shape' | 'date' | 'slash' | 'order' | 'long' | 'weekday',
  value: string,
  day: SchoolDay | null,
): Text {
  return lines(because(problem, value, day), askBreak());
}

function because(
  problem: Parameters<typeof badBreak>[0],
  value: string,
  day: SchoolDay | null,
): string {
  switch (problem) {
    case 'shape':
    case 'date':
    case 'slash':
    case 'order':
      return say(`breaks-bad-${problem}`, { typed: quote(value) });
    case 'long':
      return say('breaks-bad-long', { days: value, most: LONGEST_BREAK_DAYS });
    case 'weekday':
      return day
        ? say('breaks-bad-weekday', {
            date: dayAndMonth(day),
            year: day.slice(0, 4),
            weekday: dayName(day),
          })
        : '';
  }
}

/** The public holidays that can be taken over. `chosen` of `of` are ticked. */
export function holidayList(
  schoolClass: SchoolClass,
  { place, of, chosen, page, pages }: HolidayWords,
): Text {
  return lines(
    bold(say('breaks-holidays', { class: name(schoolClass.title) })),
    say('breaks-holidays-of', { place }),
    of === 0 ? say('breaks-holidays-none') : say('breaks-holidays-ticked', { chosen, of }),
    say('breaks-holidays-compare'),
    pages > 1 ? say('breaks-holidays-page', { page: page + 1, pages }) : null,
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
  return say('breaks-holidays-add', { chosen });
}

/** After public holidays were added. */
export function holidaysAdded(added: number): string {
  return added === 0 ? say('breaks-holidays-there') : say('breaks-holidays-added', { added });
}

/** Choosing a country, or a region of one. */
export function choosePlace(country: string | null, page: number, pages: number): Text {
  return lines(
    bold(country === null ? say('breaks-whose-holidays') : say('breaks-which-region', { country })),
    say(country === null ? 'breaks-choose-country' : 'breaks-some-in-region'),
    pages > 1 ? say('breaks-places-page', { page: page + 1, pages }) : null,
  );
}
