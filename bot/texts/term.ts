import type { SchoolClass } from '../../db/index.ts';
import {
  estimateMinutes,
  type RungId,
  rungsInPart,
  type SchoolDay,
  type WeekPlan,
  type YearShare,
} from '../../drills/index.ts';
import { rungTitle } from './part-title.ts';
import { partLines } from './plan.ts';
import { bold, count, lines, name, shortDate, type Text } from './words.ts';

/** Where a term stands: its weeks, the first school day of each, and the week that the next evening is in. */
export interface TermWords {
  readonly weeks: readonly WeekPlan[];
  readonly starts: readonly SchoolDay[];
  /** Null before the first week. */
  readonly week: number | null;
}

/** Steps of a week that are named; more are counted. */
const NEW_NAMED = 2;

/** The term, some weeks of it from `first` on, counted from 1. */
export function termScreen(
  schoolClass: SchoolClass,
  term: TermWords,
  { first, shown }: { first: number; shown: number },
): Text {
  const weeks = Array.from({ length: shown }, (_, at) => weekLine(term, first + at));
  return lines(
    bold(`${name(schoolClass.title)}: the term, ${count(term.weeks.length, 'week', 'weeks')}`),
    stand(term),
    ...weeks,
    'Each goes out by itself, unless you put another plan in use for that week.',
  );
}

function stand({ weeks, starts, week }: TermWords): string {
  const [begins] = starts;
  if (week === null) return begins ? `It begins on ${shortDate(begins)}.` : 'No school days ahead.';
  if (week > weeks.length) return 'It is over; its last plan stays in use.';
  return `The next evening is in week ${week}.`;
}

/** A week with what it brings that the week before did not have. */
function weekLine({ weeks, starts, week }: TermWords, at: number): string {
  const steps = stepsOf(weeks[at - 1]);
  const before = stepsOf(weeks[at - 2]);
  const fresh = steps.filter((step) => !before.includes(step)).map(rungTitle);
  const named = fresh.slice(0, NEW_NAMED).join('; ');
  const more = fresh.length - NEW_NAMED;
  const what =
    fresh.length === 0 ? 'as before' : `new: ${named}${more > 0 ? ` and ${more} more` : ''}`;
  const start = starts[at - 1];
  return `${at === week ? '▸ ' : ''}${at}. ${start ? `${shortDate(start)}, ` : ''}${what}`;
}

function stepsOf(plan: WeekPlan | undefined): readonly RungId[] {
  return plan?.parts.flatMap(rungsInPart) ?? [];
}

/** One week of a term. */
export function termWeek({ weeks, starts, week }: TermWords, at: number): Text {
  const plan = weeks[at - 1] ?? { parts: [] };
  const start = starts[at - 1];
  const from = start ? `, from ${shortDate(start)}` : '';
  return lines(
    bold(`Week ${at} of ${weeks.length}${from}`),
    ...partLines(plan),
    `About ${count(estimateMinutes(plan), 'minute', 'minutes')} an evening.`,
    weekNote(at, week),
  );
}

function weekNote(at: number, week: number | null): string | null {
  if (week === null || at > week) return null;
  return at === week
    ? 'The next evening is in this week: a change counts from then.'
    : 'This week is over.';
}

/** Before a term is made. `grade` is the class's in words, `steps` how many steps it would have. */
export function newTerm(schoolClass: SchoolClass, grade: string, steps: number): Text {
  return lines(
    bold(`${name(schoolClass.title)}: a new term`),
    `From the steps usual in ${grade}: ${count(steps, 'step', 'steps')} in all, easier ones first.`,
    'How many weeks, which of the year’s steps, and from when?',
    'Weeks without school are passed over. Every week can be changed afterwards.',
  );
}

/** A term needs a grade to be made from. */
export function termNeedsGrade(schoolClass: SchoolClass): Text {
  return lines(
    bold(`${name(schoolClass.title)}: a new term`),
    'A term is made from the steps that are usual in a grade. Choose the curriculum and the grade first.',
  );
}

const SHARES: Readonly<Record<YearShare, string>> = {
  all: 'The whole year',
  first: 'First third',
  second: 'Second third',
  last: 'Last third',
};

/** Which of a year's steps a term is made from, on a button. */
export function shareButton(share: YearShare): string {
  return SHARES[share];
}

/** A number of weeks on a button. */
export function weeksButton(weeks: number): string {
  return count(weeks, 'week', 'weeks');
}

/** Makes the term, from a day on. */
export function makeTermButton(from: SchoolDay): string {
  return `Make it, from ${shortDate(from)}`;
}

/** One week of a term on a button. */
export function termWeekButton(week: number): string {
  return `Week ${week}`;
}

/** A term that is other than it was when the button was made. */
export const TERM_MOVED_ON = 'The term has changed since. Nothing was changed by this tap.';
