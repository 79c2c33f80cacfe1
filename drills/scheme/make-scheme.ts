import { type ProfileId, usualRungs } from '../curriculum/profiles.ts';
import type { WeekPlan } from '../evening/week-plan.ts';
import type { Rung } from '../ladder/rung.ts';
import { RUNGS } from '../ladder/rungs.ts';
import { orderOfSteps } from './order-of-steps.ts';

/** How many weeks a term's scheme may have. Common practice, no source: school terms last 5 to 14 weeks, a half year 20. */
export const TERM_WEEKS = { min: 1, max: 20 } as const;

/** How many parts a week is made with: an evening of about six minutes. Common practice, no source. */
export const PARTS_A_WEEK = 5;

/** Which of the grade's steps a term is made from: all, or the first, second or last third of them. */
export const YEAR_SHARES = ['all', 'first', 'second', 'last'] as const;

/** One of {@link YEAR_SHARES}. */
export type YearShare = (typeof YEAR_SHARES)[number];

/** What a term is made from. The profile `own` has no grades, and gives every rung. */
export interface TermWish {
  readonly curriculum: ProfileId;
  readonly grade: string;
  readonly weeks: number;
  readonly share?: YearShare;
}

/**
 * A term, week by week: the rungs that the curriculum asks for in the grade, in an order in which a rung never stands before one
 * it needs, passing by in a window of {@link PARTS_A_WEEK}. With few rungs each stays for several weeks; with more than the
 * weeks have room for, the last ones are left out. Every part has its rung's usual size.
 *
 * Throws RangeError for a grade that the profile does not name and for a number of weeks outside {@link TERM_WEEKS}. Empty
 * weeks are never made: a grade without rungs gives none at all.
 *
 * @example
 * makeScheme({ curriculum: 'ccss', grade: 'K', weeks: 6 })[0]?.parts[0];
 * // { rung: 'bonds.within5', cards: 10, seconds: 3 }
 */
export function makeScheme({ curriculum, grade, weeks, share = 'all' }: TermWish): WeekPlan[] {
  const { min, max } = TERM_WEEKS;
  if (!Number.isInteger(weeks) || weeks < min || weeks > max) {
    throw new RangeError(`a term of ${weeks} weeks: from ${min} to ${max} can be made`);
  }
  const usual = new Set(usualRungs(curriculum, grade).map(({ rung }) => rung));
  const steps = shareOf(orderOfSteps(RUNGS.filter(({ id }) => usual.has(id))), share);
  if (steps.length === 0) return [];
  return Array.from({ length: weeks }, (_, week) => {
    const from = startOf(week, weeks, steps.length);
    return planOf(steps.slice(from, from + PARTS_A_WEEK));
  });
}

/** Where a week's window begins: evenly from the first step to the last ones, never leaving a step out in between. */
function startOf(week: number, weeks: number, steps: number): number {
  const way = Math.max(0, steps - PARTS_A_WEEK);
  const stride = Math.min(PARTS_A_WEEK, way / Math.max(1, weeks - 1));
  return Math.round(week * stride);
}

/** A third of the steps, or a week's worth where a third is less. */
function shareOf(steps: readonly Rung[], share: YearShare): readonly Rung[] {
  if (share === 'all') return steps;
  const third = { first: 0, second: 1, last: 2 }[share];
  const to = Math.ceil((steps.length * (third + 1)) / 3);
  const from = Math.floor((steps.length * third) / 3);
  const last = Math.max(to, Math.min(PARTS_A_WEEK, steps.length));
  return steps.slice(Math.max(0, Math.min(from, last - PARTS_A_WEEK)), last);
}

function planOf(rungs: readonly Rung[]): WeekPlan {
  const inLadderOrder = RUNGS.filter((rung) => rungs.includes(rung));
  return {
    parts: inLadderOrder.map(({ id, cards, seconds }) => ({ rung: id, cards, seconds })),
  };
}
