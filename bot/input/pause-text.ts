import { parseSchoolDay, pauseProblem, type SchoolDay, weekdayOf } from '../../drills/index.ts';
import { readDate, type WrittenDate } from './date-text.ts';

/** Why a typed day cannot end a pause: `value` is what was typed, `day` the day that it is. */
export type PauseDayProblem =
  | { readonly problem: 'shape' | 'date' | 'slash'; readonly value: string }
  | { readonly problem: 'weekday' | 'past' | 'far'; readonly day: SchoolDay };

/** What may stand before the date, in any of our languages. */
const UNTIL = /^(?:until|till|to|tot|bis(?:\s+zum)?|hasta|jusqu['’]?\s?au|au)\s+/iu;

/** 29 February comes again after eight years at most. */
const LEAP_CYCLE = 8;

/**
 * Reads the day on which a pause ends: one date and nothing else, written as in a break. Without a year it is the next such
 * date after today. A day that is over and one more than 120 days ahead are refused.
 *
 * @example
 * readPauseDay('until 12 October', today); // { day: '2026-10-12' }
 */
export function readPauseDay(
  text: string,
  today: SchoolDay,
): { readonly day: SchoolDay } | PauseDayProblem {
  const typed = text.trim();
  const found = readDate(typed.replace(UNTIL, ''));
  if (!found || !/^[\s.!]*$/.test(found.rest)) return { problem: 'shape', value: typed };
  if (found.slashed) return { problem: 'slash', value: typed };
  const day = placed(found.date, today);
  if (!day) return { problem: 'date', value: typed };
  const { weekday } = found.date;
  if (weekday !== null && weekdayOf(day) !== weekday) return { problem: 'weekday', day };
  const problem = pauseProblem(day, today);
  return problem ? { problem, day } : { day };
}

function placed({ year, month, day }: WrittenDate, today: SchoolDay): SchoolDay | null {
  const at = (inYear: number) =>
    parseSchoolDay(`${[String(inYear).padStart(4, '0'), two(month), two(day)].join('-')}`);
  if (year !== null) return at(year);
  const thisYear = Number(today.slice(0, 4));
  for (let ahead = 0; ahead <= LEAP_CYCLE; ahead += 1) {
    const found = at(thisYear + ahead);
    if (found && found > today) return found;
  }
  return null;
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
