import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import { practisedEvenings } from './practised-evenings.ts';
import type { WeekInput, Wobble } from './week.ts';

const MOST_WOBBLES = 6;
/** How many imagined marks at the class's own rate are added to each fact, so that one miss out of one is not 100 %. */
const PRIOR_WEIGHT = 8;

interface Evidence {
  asked: number;
  missed: number;
  readonly missedOn: Map<string, Set<SchoolDay>>;
}

/**
 * The facts the class is least sure of, at most six, the shakiest first: missed by two children, or by one on two days.
 * They are ranked by the posterior mean miss rate under a Beta prior at the class's own overall rate with the weight
 * of 8 marks (the usual beta-binomial shrinkage); ties go by spelling.
 */
export function findWobbles(input: WeekInput): Wobble[] {
  const evidence = gather(input);
  const all = [...evidence.values()];
  const asked = all.reduce((total, fact) => total + fact.asked, 0);
  const missed = all.reduce((total, fact) => total + fact.missed, 0);
  const classRate = asked === 0 ? 0 : missed / asked;
  return [...evidence]
    .filter(([, { missedOn }]) => isRepeated(missedOn))
    .map(([fact, found]) => ({
      rate: (found.missed + PRIOR_WEIGHT * classRate) / (found.asked + PRIOR_WEIGHT),
      wobble: {
        fact,
        missed: found.missed,
        asked: found.asked,
        children: found.missedOn.size,
      },
    }))
    .sort((one, other) => other.rate - one.rate || (one.wobble.fact < other.wobble.fact ? -1 : 1))
    .slice(0, MOST_WOBBLES)
    .map(({ wobble }) => wobble);
}

function gather({ days, children }: WeekInput): Map<FactId, Evidence> {
  const evidence = new Map<FactId, Evidence>();
  for (const child of children) {
    for (const { day, facts } of practisedEvenings(child, days)) {
      for (const { fact, right } of facts) {
        const found = evidence.get(fact) ?? { asked: 0, missed: 0, missedOn: new Map() };
        evidence.set(fact, found);
        found.asked += 1;
        if (right) continue;
        found.missed += 1;
        found.missedOn.set(
          child.childId,
          (found.missedOn.get(child.childId) ?? new Set()).add(day),
        );
      }
    }
  }
  return evidence;
}

function isRepeated(missedOn: ReadonlyMap<string, ReadonlySet<SchoolDay>>): boolean {
  return missedOn.size >= 2 || [...missedOn.values()].some((days) => days.size >= 2);
}
