import { createRandom } from '../../../drills/index.ts';
import { createActivationLearner } from './activation-learner.ts';
import type { Learner, Traits } from './learner.ts';
import type { Outcome } from './outcome.ts';
import { POLICIES } from './policies.ts';
import { createPowerLearner } from './power-learner.ts';
import { factsIn } from './schedule.ts';
import { type Conditions, simulateTerm } from './simulate.ts';
import { drawFactEase, drawTraits } from './traits.ts';

/** The kinds of learner, none of them one of the models that are compared. */
export const LEARNERS = {
  activation: createActivationLearner,
  power: createPowerLearner,
} as const satisfies Record<string, (traits: Traits) => Learner>;

export type LearnerName = keyof typeof LEARNERS;

/** A whole class under one policy. */
export interface ClassTerm extends Conditions {
  readonly learner: LearnerName;
  readonly policy: string;
  readonly children: number;
  readonly seed: string;
}

/** Means over a class. `toMost` holds the evenings of those children who came so far. */
export interface ClassOutcome extends Omit<Outcome, 'eveningsToMost'> {
  readonly children: number;
  readonly toMost: readonly number[];
}

/** Simulates a class. A seed gives the same children with the same missed evenings under every policy. */
export function simulateClass(term: ClassTerm): ClassOutcome {
  const { children, seed, schedule } = term;
  const policy = POLICIES.get(term.policy);
  if (policy === undefined) throw new RangeError(`no such policy: ${term.policy}`);
  const facts = factsIn(schedule);
  const ease = drawFactEase(facts, createRandom(`${seed}|facts`));
  const outcomes = Array.from({ length: children }, (_, child) => {
    const own = `${seed}|${child}`;
    const traits = drawTraits(facts, ease, createRandom(own));
    const learner = LEARNERS[term.learner](traits);
    return simulateTerm({ ...term, learner, policy, seed: own });
  });
  const mean = (of: (outcome: Outcome) => number) =>
    outcomes.reduce((sum, outcome) => sum + of(outcome), 0) / Math.max(1, children);
  return {
    children,
    knownBefore: mean(({ knownBefore }) => knownBefore),
    known: mean(({ known }) => known),
    nearly: mean(({ nearly }) => nearly),
    evenings: mean(({ evenings }) => evenings),
    score: mean(({ score }) => score),
    toMost: outcomes.flatMap(({ eveningsToMost }) => eveningsToMost ?? []),
  };
}
