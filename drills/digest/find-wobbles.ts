import { type MissTally, priorWeight, shrunkRate } from './prior-weight.ts';
import type { Wobble } from './summary.ts';
import type { WeekInput } from './week.ts';
import { type FactEvidence, gatherEvidence } from './wobble-evidence.ts';

const MOST_WOBBLES = 6;

/**
 * What the class is least sure of, at most six, the shakiest first: missed by two children, or by one on two days. A sum and
 * its turned-round twin count together.
 *
 * They are ranked by the miss rate drawn to the class's own (a Beta prior whose weight the marks decide, see priorWeight), with
 * marks of an evening that went wrong throughout counting for less. So neither two misses out of two nor one child's awful
 * evening leads the facts that several children missed. Ties go by spelling.
 */
export function findWobbles(input: WeekInput): Wobble[] {
  const evidence = gatherEvidence(input);
  const prior = priorOf([...evidence.values()].map(({ weighed }) => weighed));
  return [...evidence]
    .filter(([, { missedOn }]) => isRepeated(missedOn))
    .map(([key, found]) => ({ key, rate: shrunkRate(found.weighed, prior), found }))
    .sort((one, other) => other.rate - one.rate || (one.key < other.key ? -1 : 1))
    .slice(0, MOST_WOBBLES)
    .map(({ found }) => ({
      facts: spellingsOf(found),
      missed: found.missed,
      asked: found.asked,
      children: found.missedOn.size,
    }));
}

function priorOf(weighed: readonly MissTally[]): { common: number; weight: number } {
  const asked = weighed.reduce((total, tally) => total + tally.asked, 0);
  const missed = weighed.reduce((total, tally) => total + tally.missed, 0);
  return { common: asked === 0 ? 0 : missed / asked, weight: priorWeight(weighed) };
}

/** The spellings that were missed, the one missed most first. */
function spellingsOf({ spellings }: FactEvidence): Wobble['facts'] {
  return [...spellings]
    .sort(([one, often], [other, times]) => times - often || (one < other ? -1 : 1))
    .map(([fact]) => fact);
}

function isRepeated(missedOn: FactEvidence['missedOn']): boolean {
  return missedOn.size >= 2 || [...missedOn.values()].some((days) => days.size >= 2);
}
