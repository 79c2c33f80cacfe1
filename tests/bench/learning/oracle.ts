import { bestOf } from '../../../drills/evening/choice-best.ts';
import { encourage } from '../../../drills/evening/choice-encourage.ts';
import { KNOWN } from './outcome.ts';
import type { EveningNeed, Policy } from './policy.ts';
import { entriesOf } from './schedule.ts';

/** How an oracle ranks a fact, from the true chances on the next school day: as it stands, and if asked today. */
type Rank = (ifLeft: number, ifAsked: number) => number;

/**
 * Greedy on the measure itself, the number of facts known on the next school day. First come facts that are not known if left
 * alone, those nearest to it first, so that each asking makes a fact known as soon as can be; then those that gain most.
 */
const nearestToKnown: Rank = (ifLeft, ifAsked) => (ifLeft < KNOWN ? 1 + ifLeft : ifAsked - ifLeft);

/** Greedy on the mean chance of a right answer on the next school day. */
const greatestRise: Rank = (ifLeft, ifAsked) => ifAsked - ifLeft;

export const NEAREST_ORACLE = 'oracle, nearest to known';

/** The policies that see what no one can see, the learner's true state; with the rule of eight right in ten, and without. */
export const ORACLES: readonly Policy[] = [
  oracle(NEAREST_ORACLE, nearestToKnown, true),
  oracle('oracle, nearest, no score rule', nearestToKnown, false),
  oracle('oracle, greatest rise', greatestRise, true),
  oracle('oracle, greatest rise, no score rule', greatestRise, false),
];

function oracle(name: string, rank: Rank, encourages: boolean): Policy {
  return {
    name,
    start: () => ({
      cards: (need) =>
        need.plan.parts.map(({ rung, cards }) => {
          const entries = entriesOf(rung);
          const places = entries.map((_, at) => at);
          const numbers = entries.map(({ fact }) => need.numberOf(fact));
          const scores = scoresOf(numbers, rank, need);
          const best = bestOf(places, scores.worth, cards);
          const chosen = encourages ? encourage(best, places, scores) : best;
          return chosen.flatMap((at) => entries[at]?.fact ?? []);
        }),
      marked: () => undefined,
    }),
  };
}

function scoresOf(numbers: readonly number[], rank: Rank, { learner, day, next }: EveningNeed) {
  const recall = Float64Array.from(numbers, (fact) => learner.chance(fact, day));
  const worth = Float64Array.from(numbers, (fact) =>
    rank(learner.chance(fact, next), learner.chanceIfAsked(fact, day, next)),
  );
  return { recall, worth, isNew: new Uint8Array(numbers.length) };
}
