import type { Random } from '../../../drills/index.ts';
import type { Traits } from './learner.ts';

/** What the traits need to know of a fact. `family` is shared by near twins. */
export interface FactTrait {
  readonly family: string;
  readonly difficulty: number;
}

// All of these are our own choices, made before any way of choosing cards was run; in logits where no unit is named.
const CHILD_SPREAD = 0.8;
const FACT_SPREAD = 0.5;
const CHILD_FACT_SPREAD = 0.5;
const EASE_LOST_PER_STEP = 0.35;
const MIDDLE_DIFFICULTY = 2;
/** How often a fact of difficulty 0 was met before the term, on average; it falls evenly to one sixth at difficulty 5. */
const MET_BEFORE = 8;
const DAYS_BEFORE = 120;

/**
 * What is common to all children of a seed: how far each fact is easier or harder than its difficulty says. Half of the
 * variance belongs to the family, because whoever finds 3 + 4 hard finds 4 + 3 hard.
 */
export function drawFactEase(facts: readonly FactTrait[], random: Random): Float64Array {
  return spreadByFamily(facts, FACT_SPREAD, random, ({ difficulty }) => {
    return EASE_LOST_PER_STEP * (MIDDLE_DIFFICULTY - difficulty);
  });
}

/** One child's own traits around what is common. Children differ in ease, in how much was met before, and fact by fact. */
export function drawTraits(
  facts: readonly FactTrait[],
  common: Float64Array,
  random: Random,
): Traits {
  const child = CHILD_SPREAD * normal(random);
  const schooling = MET_BEFORE * (0.3 + 1.4 * random.next());
  return {
    ease: spreadByFamily(facts, CHILD_FACT_SPREAD, random, (_, at) => child + (common[at] ?? 0)),
    metBefore: facts.map(({ difficulty }) => drawDays(schooling * (1 - difficulty / 6), random)),
  };
}

function spreadByFamily(
  facts: readonly FactTrait[],
  spread: number,
  random: Random,
  base: (fact: FactTrait, at: number) => number,
): Float64Array {
  const half = spread * Math.SQRT1_2;
  const families = new Map<string, number>();
  return Float64Array.from(facts, (fact, at) => {
    const shared = families.get(fact.family) ?? half * normal(random);
    families.set(fact.family, shared);
    return base(fact, at) + shared + half * normal(random);
  });
}

/** Days before day 0 on which a fact was met: their number is Poisson's, the days are even over the time before the term. */
function drawDays(mean: number, random: Random): number[] {
  const days: number[] = [];
  let left = -Math.log(1 - random.next());
  while (left < mean) {
    days.push(-3 - random.int(DAYS_BEFORE));
    left -= Math.log(1 - random.next());
  }
  return days.sort((one, other) => one - other);
}

/** A draw from the standard normal distribution (Box and Muller 1958). */
function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random.next())) * Math.cos(2 * Math.PI * random.next());
}
