import type { FactId, Random, SchoolDay, WeekPlan } from '../../../drills/index.ts';
import type { Learner } from './learner.ts';
import type { TermDay } from './term.ts';

/** An evening that needs its cards. Only the oracles look at `learner`; `numberOf` gives a fact's number there. */
export interface EveningNeed extends TermDay {
  readonly plan: WeekPlan;
  readonly seed: string;
  readonly random: Random;
  readonly learner: Learner;
  readonly numberOf: (fact: FactId) => number;
}

/** What is put on a card by the adult. */
export interface BenchMark {
  readonly fact: FactId;
  readonly day: SchoolDay;
  readonly right: boolean;
}

/** One child's evenings under a policy. */
export interface Chooser {
  /** The cards of each part of the plan. */
  cards(need: EveningNeed): readonly (readonly FactId[])[];
  /** The marks of the evening, in order. */
  marked(marks: readonly BenchMark[]): void;
}

/** A way of choosing cards. `start` begins with a child nothing is known of. */
export interface Policy {
  readonly name: string;
  start(): Chooser;
}
