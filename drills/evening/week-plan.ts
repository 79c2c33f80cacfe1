import { longestRun } from '../ladder/run-starts.ts';
import type { Rung, RungId } from '../ladder/rung.ts';
import { rungById } from '../ladder/rungs.ts';

/** One line of a class's week: which rung, how many cards (or numbers in a run), how many seconds for each. */
export interface PlanPart {
  readonly rung: RungId;
  readonly cards: number;
  readonly seconds: number;
}

/** What a class practises from the next evening on. The workbook is kept beside it, not in it. */
export interface WeekPlan {
  readonly parts: readonly PlanPart[];
}

/**
 * What is wrong with a plan. `part` is the position in the plan from 0, and 0 where the whole plan is at fault;
 * `value` is what was given; `min` and `max` are what is allowed, both 0 where no number is at fault.
 */
export interface PlanProblem {
  readonly part: number;
  readonly kind:
    | 'unknown_rung'
    | 'cards'
    | 'seconds'
    | 'empty'
    | 'too_many_parts'
    | 'same_rung_twice';
  readonly value: string;
  readonly min: number;
  readonly max: number;
}

/** What a plan may hold: number of parts, cards a part (see {@link maxCards}), seconds a card. Common practice, no source. */
export const PLAN_LIMITS = {
  parts: { min: 1, max: 6 },
  cards: { min: 3, max: 20 },
  seconds: { min: 2, max: 15 },
} as const;

const MARKING_SECONDS_PER_PART = 30;

/**
 * The most cards a plan may ask of a rung: no card comes twice in a part, so a small set allows fewer than 20, and so does a
 * counting range too short for a run of 20 numbers.
 *
 * @example
 * maxCards(rung); // 5 for the rung doubles.to5
 */
export function maxCards(rung: Rung): number {
  const { max } = PLAN_LIMITS.cards;
  return Math.min(max, rung.kind === 'facts' ? rung.facts.length : longestRun(rung));
}

/**
 * Everything that is wrong with a plan, in the order of its parts; empty when it can be sent.
 *
 * @example
 * checkPlan({ parts: [] }); // [{ part: 0, kind: 'empty', value: '0', min: 1, max: 6 }]
 */
export function checkPlan(plan: WeekPlan): PlanProblem[] {
  const { min, max } = PLAN_LIMITS.parts;
  const count = plan.parts.length;
  const whole = { part: 0, value: String(count), min, max };
  const problems: PlanProblem[] = [];
  if (count < min) problems.push({ ...whole, kind: 'empty' });
  if (count > max) problems.push({ ...whole, kind: 'too_many_parts' });
  plan.parts.forEach((part, index) => {
    problems.push(...checkPart(part, index));
    const first = plan.parts.findIndex(({ rung }) => rung === part.rung);
    if (first < index) {
      problems.push({ part: index, kind: 'same_rung_twice', value: part.rung, min: 0, max: 0 });
    }
  });
  return problems;
}

/**
 * About how long an evening takes, in whole minutes, at least 1: the cards at their pace, and half a minute
 * a part for marking (our estimate, no source).
 *
 * @example
 * estimateMinutes({ parts: [{ rung: 'bonds.to10', cards: 10, seconds: 3 }] }); // 1
 */
export function estimateMinutes(plan: WeekPlan): number {
  const seconds = plan.parts.reduce(
    (total, part) => total + part.cards * part.seconds + MARKING_SECONDS_PER_PART,
    0,
  );
  return Math.max(1, Math.ceil(seconds / 60));
}

function checkPart(part: PlanPart, index: number): PlanProblem[] {
  const rung = rungById(part.rung);
  if (rung === null) {
    return [{ part: index, kind: 'unknown_rung', value: part.rung, min: 0, max: 0 }];
  }
  const cards = { min: PLAN_LIMITS.cards.min, max: maxCards(rung) };
  const { seconds } = PLAN_LIMITS;
  const problems: PlanProblem[] = [];
  if (!isWithin(part.cards, cards)) {
    problems.push({ part: index, kind: 'cards', value: String(part.cards), ...cards });
  }
  if (!isWithin(part.seconds, seconds)) {
    problems.push({ part: index, kind: 'seconds', value: String(part.seconds), ...seconds });
  }
  return problems;
}

function isWithin(value: number, { min, max }: { min: number; max: number }): boolean {
  return Number.isInteger(value) && value >= min && value <= max;
}
