import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import { shapeOf } from '../facts/fact-shape.ts';
import { runEvidence } from '../memory/run-evidence.ts';
import { practisedEvenings } from './practised-evenings.ts';
import { shrunkRate } from './prior-weight.ts';
import type { EveningRecord, WeekInput } from './week.ts';

/** An evening's own miss rate is drawn to the class's with this many marks: one miss out of one is no bad evening. Ours. */
const EVENING_WEIGHT = 4;

/**
 * What a week says of one fact, or of a sum and its turned-round twin. `missed` and `asked` count marks; `weighed` counts each
 * mark by how much its evening says of single facts. `missedOn` has each child's days, `spellings` how often each was missed.
 */
export interface FactEvidence {
  missed: number;
  asked: number;
  readonly weighed: { missed: number; asked: number };
  readonly missedOn: Map<string, Set<SchoolDay>>;
  readonly spellings: Map<FactId, number>;
}

interface OneMark {
  readonly fact: FactId;
  readonly right: boolean;
}

interface OneEvening {
  readonly childId: string;
  readonly day: SchoolDay;
  readonly marks: readonly OneMark[];
}

/**
 * Gathers a week's marks, steps of counting runs among them, by fact. A mark weighs less the more of its evening was missed: a
 * tired evening on which everything goes wrong says something of the evening, not of the facts. The weight is the share right
 * of that evening, drawn to the class's rate by four marks.
 */
export function gatherEvidence({ days, children }: WeekInput): Map<string, FactEvidence> {
  const evenings = children.flatMap((child) =>
    practisedEvenings(child, days).map((evening) => ({
      childId: child.childId,
      day: evening.day,
      marks: marksOf(evening),
    })),
  );
  const common = rateOf(evenings.flatMap(({ marks }) => marks));
  const evidence = new Map<string, FactEvidence>();
  for (const evening of evenings) addEvening(evidence, evening, common);
  return evidence;
}

function addEvening(evidence: Map<string, FactEvidence>, evening: OneEvening, common: number) {
  const { childId, day, marks } = evening;
  const own = { missed: marks.filter(({ right }) => !right).length, asked: marks.length };
  const weight = 1 - shrunkRate(own, { common, weight: EVENING_WEIGHT });
  for (const { fact, right } of marks) {
    const key = eitherWay(fact);
    const found = evidence.get(key) ?? noEvidence();
    evidence.set(key, found);
    found.asked += 1;
    found.weighed.asked += weight;
    if (right) continue;
    found.missed += 1;
    found.weighed.missed += weight;
    found.missedOn.set(childId, (found.missedOn.get(childId) ?? new Set()).add(day));
    found.spellings.set(fact, (found.spellings.get(fact) ?? 0) + 1);
  }
}

/** The share missed; 0 of nothing. */
export function rateOf(marks: readonly { readonly right: boolean }[]): number {
  return marks.length === 0 ? 0 : marks.filter(({ right }) => !right).length / marks.length;
}

function marksOf({ facts, runs }: EveningRecord): OneMark[] {
  return [...facts, ...runs.flatMap(runEvidence)];
}

/** One key for 7 + 8 and 8 + 7, and for 3 × 5 and 5 × 3: a teacher practises the two together. */
function eitherWay(fact: FactId): string {
  const shape = shapeOf(fact);
  if (shape.kind !== 'add' && shape.kind !== 'times') return fact;
  return `${shape.kind}:${Math.min(shape.a, shape.b)}&${Math.max(shape.a, shape.b)}`;
}

function noEvidence(): FactEvidence {
  return {
    missed: 0,
    asked: 0,
    weighed: { missed: 0, asked: 0 },
    missedOn: new Map(),
    spellings: new Map(),
  };
}
