import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { RungId } from '../ladder/rung.ts';
import { rungById } from '../ladder/rungs.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import { chooseFacts } from './choose-facts.ts';
import { chooseRun } from './choose-run.ts';
import type { Drill, DrillPart } from './drill.ts';
import { createRandom } from './random.ts';
import type { PlanPart, WeekPlan } from './week-plan.ts';

/** Stored with every drill. It goes up whenever the same input would give another drill. */
export const COMPOSER_VERSION = 1;

/**
 * About how many new facts a child takes in at a sitting: mean acquisition rate 4.05 in a study of 55 children
 * (Assessment for Effective Intervention 41(3), 2016, 131-140).
 */
const NEW_FACTS_AN_EVENING = 4;

/**
 * What an evening is made from. `lastStarts` holds where this child's latest run on each rung began;
 * `seed` is any text that is the child's and the day's own.
 */
export interface EveningInput {
  readonly plan: WeekPlan;
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly lastStarts: ReadonlyMap<RungId, number>;
  readonly today: SchoolDay;
  readonly seed: string;
}

/**
 * One child's drill for one day. The blueprint is the plan's, the same for the whole class; which facts fill it is the
 * child's own (see chooseFacts and chooseRun). The same input gives the same drill on any machine, in any order of
 * the maps' entries. A part asks for as many cards as planned, or the rung's whole set when that is smaller.
 * The new facts of an evening are shared out over its parts, at least one each.
 *
 * Throws RangeError for a plan with a rung that does not exist.
 *
 * @example
 * composeEvening({ plan: { parts: [] }, memory, lastStarts, today, seed }); // { version: 1, parts: [] }
 */
export function composeEvening(input: EveningInput): Drill {
  const newLimit = newFactsPerPart(input);
  return {
    version: COMPOSER_VERSION,
    parts: input.plan.parts.map((part, index) => composePart(part, index, newLimit, input)),
  };
}

function composePart(
  part: PlanPart,
  index: number,
  newLimit: number,
  { memory, lastStarts, today, seed }: EveningInput,
): DrillPart {
  const rung = existingRung(part.rung);
  // Each part has its own chance, so that a change to one leaves the others as they were.
  const random = createRandom(`${seed}|${index}|${rung.id}`);
  const { cards, seconds } = part;
  if (rung.kind === 'run') {
    return chooseRun({ rung, cards, seconds, lastStart: lastStarts.get(rung.id), random });
  }
  const { id, strand, facts } = rung;
  const chosen = chooseFacts({ facts, count: cards, newLimit, memory, today, random });
  return { kind: 'facts', strand, rung: id, seconds, cards: chosen };
}

function newFactsPerPart({ plan, memory }: EveningInput): number {
  const partsWithNew = plan.parts.filter((part) => {
    const rung = existingRung(part.rung);
    return rung.kind === 'facts' && rung.facts.some((fact) => !memory.has(fact));
  });
  return Math.max(1, Math.floor(NEW_FACTS_AN_EVENING / Math.max(1, partsWithNew.length)));
}

function existingRung(id: RungId) {
  const rung = rungById(id);
  if (rung === null) throw new RangeError(`no such rung: ${id}`);
  return rung;
}
