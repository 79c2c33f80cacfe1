import fc from 'fast-check';
import { numberOf } from '../../../drills/calendar/school-day.ts';
import { difficultyOf } from '../../../drills/facts/difficulty.ts';
import { familyOf } from '../../../drills/facts/near-twin.ts';
import {
  type Drill,
  type EveningInput,
  type FactId,
  type FactPart,
  type FactRung,
  MEMORY_MODEL,
  type RunPart,
  type RunRung,
  rungById,
} from '../../../drills/index.ts';
import { anyEvening } from './arbitrary-evening.ts';

/** How many evenings each property is tried on. */
const RUNS = 1000;

/** Checks a property on very many evenings. */
export function forAnyEvening(check: (input: EveningInput) => void): void {
  fc.assert(fc.property(anyEvening, check), { numRuns: RUNS });
}

/** The parts with cards of a drill, each with its rung and how many cards were planned. */
export function factParts(
  { parts }: Drill,
  { plan }: EveningInput,
): { part: FactPart; rung: FactRung; planned: number }[] {
  return parts.flatMap((part, at) => {
    const rung = rungById(part.rung);
    if (part.kind !== 'facts' || rung?.kind !== 'facts') return [];
    return [{ part, rung, planned: plan.parts[at]?.cards ?? 0 }];
  });
}

/** The counting runs of a drill, each with its rung and how many numbers were planned. */
export function runParts(
  { parts }: Drill,
  { plan }: EveningInput,
): { part: RunPart; rung: RunRung; planned: number }[] {
  return parts.flatMap((part, at) => {
    const rung = rungById(part.rung);
    if (part.kind !== 'run' || rung?.kind !== 'run') return [];
    return [{ part, rung, planned: plan.parts[at]?.cards ?? 0 }];
  });
}

/** The facts that the child was never asked itself, whatever relatives lent. */
export function newOnes(facts: readonly FactId[], { memory }: EveningInput): FactId[] {
  return facts.filter((fact) => (memory.get(fact)?.asked ?? 0) === 0);
}

/** How many of these facts the child can be expected not to know today. */
export function expectedUnknown(facts: readonly FactId[], { memory, today }: EveningInput): number {
  return facts.reduce((sum, fact) => {
    const state = memory.get(fact)?.state ?? MEMORY_MODEL.start(difficultyOf(fact));
    return sum + 1 - MEMORY_MODEL.recall(state, numberOf(today));
  }, 0);
}

/** The facts that were asked and whose last mark was right, or missed. */
export function lastMarked(
  facts: readonly FactId[],
  right: boolean,
  { memory }: EveningInput,
): FactId[] {
  return facts.filter((fact) => {
    const known = memory.get(fact);
    return known !== undefined && known.asked > 0 && known.lastRight === right;
  });
}

/** How many new facts a part of so many cards must bring, because the child was asked too few of its rung. */
export function forcedNew(size: number, { facts }: FactRung, input: EveningInput): number {
  return size - (facts.length - newOnes(facts, input).length);
}

/** Whether a whole part of this size was asked before, with at most one fact in ten missed last. */
export function goesWell(size: number, { facts }: FactRung, input: EveningInput): boolean {
  const missed = lastMarked(facts, false, input).length;
  const asked = missed + lastMarked(facts, true, input).length;
  return asked >= size && missed * 10 <= asked;
}

/** Whether some order of these cards keeps near twins apart: no family is more than every other place. */
export function canBeParted(cards: readonly FactId[]): boolean {
  return largestFamily(cards) <= Math.ceil(cards.length / 2);
}

/** Whether one family is more than half of the cards: kept apart, it takes every other place, and so the first. */
export function opensWithTwins(cards: readonly FactId[]): boolean {
  return largestFamily(cards) * 2 > cards.length;
}

function largestFamily(cards: readonly FactId[]): number {
  const sizes = new Map<string, number>();
  for (const card of cards) sizes.set(familyOf(card), (sizes.get(familyOf(card)) ?? 0) + 1);
  return Math.max(0, ...sizes.values());
}

/** Whether two near twins follow each other. */
export function twinsTouch(cards: readonly FactId[]): boolean {
  return cards.some((card, at) => {
    const before = cards[at - 1];
    return before !== undefined && before !== card && familyOf(before) === familyOf(card);
  });
}
