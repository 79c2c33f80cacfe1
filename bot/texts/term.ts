import type { SchoolClass } from '../../db/index.ts';
import {
  estimateMinutes,
  type RungId,
  rungsInPart,
  type SchoolDay,
  type WeekPlan,
  type YearShare,
} from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { clauses } from './clauses.ts';
import { rungTitle } from './part-title.ts';
import { partLines } from './plan.ts';
import { bold, lines, name, shortDate, type Text } from './words.ts';

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
    bold(
      say('term-title', { class: name(schoolClass.title), weeks: weeksButton(term.weeks.length) }),
    ),
    stand(term),
    ...weeks,
    say('term-by-itself'),
  );
}

function stand({ weeks, starts, week }: TermWords): string {
  const [begins] = starts;
  if (week === null) {
    return begins ? say('term-begins', { day: shortDate(begins) }) : say('term-no-days');
  }
  return week > weeks.length ? say('term-over') : say('term-next', { week });
}

/** A week with what it brings that the week before did not have. */
function weekLine({ weeks, starts, week }: TermWords, at: number): string {
  const steps = stepsOf(weeks[at - 1]);
  const before = stepsOf(weeks[at - 2]);
  const fresh = steps.filter((step) => !before.includes(step)).map(rungTitle);
  const start = starts[at - 1];
  const said = [...(start ? [shortDate(start)] : []), newSteps(fresh)].join(', ');
  return `${at === week ? '▸ ' : ''}${at}. ${said}`;
}

function newSteps(fresh: readonly string[]): string {
  if (fresh.length === 0) return say('term-as-before');
  const steps = clauses(fresh.slice(0, NEW_NAMED));
  const count = fresh.length - NEW_NAMED;
  return count > 0 ? say('term-new-more', { steps, count }) : say('term-new', { steps });
}

function stepsOf(plan: WeekPlan | undefined): readonly RungId[] {
  return plan?.parts.flatMap(rungsInPart) ?? [];
}

/** One week of a term. */
export function termWeek({ weeks, starts, week }: TermWords, at: number): Text {
  const plan = weeks[at - 1] ?? { parts: [] };
  const start = starts[at - 1];
  const place = { week: at, of: weeks.length };
  const minutes = say('words-minutes', { count: estimateMinutes(plan) });
  return lines(
    bold(
      start ? say('term-week-from', { ...place, day: shortDate(start) }) : say('term-week', place),
    ),
    ...partLines(plan),
    say('plan-stand-evening', { minutes }),
    weekNote(at, week),
  );
}

function weekNote(at: number, week: number | null): string | null {
  if (week === null || at > week) return null;
  return at === week ? say('term-week-now') : say('term-week-over');
}

/** Before a term is made. `grade` is the class's in words, `steps` how many steps it would have. */
export function newTerm(schoolClass: SchoolClass, grade: string, steps: number): Text {
  return lines(
    bold(say('term-new-title', { class: name(schoolClass.title) })),
    say('term-from-steps', { grade, count: steps }),
    say('term-ask'),
    say('term-passed-over'),
  );
}

/** A term needs a grade to be made from. */
export function termNeedsGrade(schoolClass: SchoolClass): Text {
  return lines(
    bold(say('term-new-title', { class: name(schoolClass.title) })),
    say('term-needs-grade'),
  );
}

/** Which of a year's steps a term is made from, on a button. */
export function shareButton(share: YearShare): string {
  return say(`term-share-${share}`);
}

/** A number of weeks on a button. */
export function weeksButton(weeks: number): string {
  return say('term-weeks', { count: weeks });
}

/** Makes the term, from a day on. */
export function makeTermButton(from: SchoolDay): string {
  return say('term-make', { day: shortDate(from) });
}

/** One week of a term on a button. */
export function termWeekButton(week: number): string {
  return say('term-week-button', { week });
}

/** A term that is other than it was when the button was made. */
export function termMovedOn(): string {
  return say('term-moved-on');
}
