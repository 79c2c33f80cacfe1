import { longestRun } from '../ladder/run-starts.ts';
import type { Rung } from '../ladder/rung.ts';
import { rungById } from '../ladder/rungs.ts';
import { canMix, MIXED_RUNGS, type PlanPart, rungsInPart } from './plan-part.ts';

export type { PlanPart } from './plan-part.ts';

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
    | 'same_rung_twice'
    | 'too_many_mixed'
    | 'cannot_mix';
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
 * The most cards a part may ask: those of {@link maxCards} for one rung; for a mixed one, the different facts of all of them
 * together, 20 at most. A rung that does not exist adds none.
 *
 * @example
 * maxCardsOf({ rung: 'doubles.to5', also: ['halves.to10'] }); // 10
 */
export function maxCardsOf(part: Pick<PlanPart, 'rung' | 'also'>): number {
  const rungs = rungsInPart(part).flatMap((id) => rungById(id) ?? []);
  const [only] = rungs;
  if (only !== undefined && rungs.length === 1) return maxCards(only);
  const facts = new Set(rungs.flatMap((rung) => (rung.kind === 'facts' ? rung.facts : [])));
  return Math.min(PLAN_LIMITS.cards.max, facts.size);
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
    const before = plan.parts.slice(0, index).flatMap(rungsInPart);
    const twice = rungsInPart(part).find((rung, at, own) =>
      [...before, ...own.slice(0, at)].includes(rung),
    );
    if (twice !== undefined) {
      problems.push({ part: index, kind: 'same_rung_twice', value: twice, min: 0, max: 0 });
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
  const rungs = rungsInPart(part).map((id) => ({ id, rung: rungById(id) }));
  const unknown = rungs.find(({ rung }) => rung === null);
  if (unknown) return [{ part: index, kind: 'unknown_rung', value: unknown.id, min: 0, max: 0 }];
  const cards = { min: PLAN_LIMITS.cards.min, max: maxCardsOf(part) };
  const { seconds } = PLAN_LIMITS;
  const problems = checkMixing(
    rungs.flatMap(({ rung }) => rung ?? []),
    index,
  );
  if (!isWithin(part.cards, cards)) {
    problems.push({ part: index, kind: 'cards', value: String(part.cards), ...cards });
  }
  if (!isWithin(part.seconds, seconds)) {
    problems.push({ part: index, kind: 'seconds', value: String(part.seconds), ...seconds });
  }
  return problems;
}

function checkMixing([first, ...also]: readonly Rung[], index: number): PlanProblem[] {
  const problems: PlanProblem[] = [];
  const count = also.length + 1;
  if (count > MIXED_RUNGS) {
    const range = { min: 1, max: MIXED_RUNGS };
    problems.push({ part: index, kind: 'too_many_mixed', value: String(count), ...range });
  }
  const other = also.find(({ strand }) => first && !canMix(first.strand, strand));
  if (other) problems.push({ part: index, kind: 'cannot_mix', value: other.id, min: 0, max: 0 });
  return problems;
}

function isWithin(value: number, { min, max }: { min: number; max: number }): boolean {
  return Number.isInteger(value) && value >= min && value <= max;
}
