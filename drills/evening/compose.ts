import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { FactRung, Rung, RungId } from '../ladder/rung.ts';
import { rungTable } from '../ladder/rung-table.ts';
import { rungById } from '../ladder/rungs.ts';
import { MEMORY_MODEL } from '../memory/default-model.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel } from '../memory/model.ts';
import { chooseCatchUp } from './choose-catch-up.ts';
import { chooseFacts } from './choose-facts.ts';
import { chooseRun } from './choose-run.ts';
import type { Drill, DrillPart } from './drill.ts';
import { newFactsPerPart } from './new-facts.ts';
import { askedOf } from './part-size.ts';
import { createRandom, type Random } from './random.ts';
import { repeatCards } from './repeat-cards.ts';
import { cardsIn, type Variant } from './variant.ts';
import type { PlanPart, WeekPlan } from './week-plan.ts';

/** Stored with every drill. It goes up whenever the same input would give another drill, so with another memory model too. */
export const COMPOSER_VERSION = 2;

/**
 * What an evening is made from. `lastStarts` holds where this child's latest run on each rung began;
 * `seed` is any text that is the child's and the day's own. `variant` is `full` when left out; `before` is the drill that
 * `again` repeats, and no other variant looks at it.
 */
export interface EveningInput {
  readonly plan: WeekPlan;
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly lastStarts: ReadonlyMap<RungId, number>;
  readonly today: SchoolDay;
  readonly seed: string;
  readonly variant?: Variant;
  readonly before?: Drill;
}

/**
 * One child's drill for one day. The blueprint is the plan's, the same for the whole class; which facts fill it is the
 * child's own (see chooseFacts and chooseRun). The same input gives the same drill on any machine, in any order of
 * the maps' entries. A part asks for as many cards as planned, or the rung's whole set when that is smaller; for the
 * variants see {@link Variant}. `again` repeats the cards of each part that is still planned with the same blueprint, and
 * composes the others anew.
 *
 * Throws RangeError for a plan with a rung that does not exist, and for `again` without a drill before.
 *
 * @example
 * composeEvening({ plan: { parts: [] }, memory, lastStarts, today, seed }); // { version: 2, parts: [] }
 */
export function composeEvening(input: EveningInput, model: MemoryModel = MEMORY_MODEL): Drill {
  const { plan, memory, variant = 'full', before } = input;
  if (variant === 'again' && before === undefined) {
    throw new RangeError('the variant again needs the drill before, to take its cards from');
  }
  const rungs = plan.parts.map((part) => existingRung(part.rung));
  const newLimit = newFactsPerPart(rungs, memory, variant);
  const parts = plan.parts.map((part, index) => {
    const rung = rungs[index] ?? existingRung(part.rung);
    // Each part has its own chance, so that a change to one leaves the others as they were.
    const random = createRandom(`${input.seed}|${index}|${rung.id}`);
    return composePart({ part, rung, newLimit, variant, random, model }, input);
  });
  return variant === 'full'
    ? { version: COMPOSER_VERSION, parts }
    : { version: COMPOSER_VERSION, variant, parts };
}

interface PartChoice {
  readonly part: PlanPart;
  readonly rung: Rung;
  readonly newLimit: number;
  readonly variant: Variant;
  readonly random: Random;
  readonly model: MemoryModel;
}

function composePart(choice: PartChoice, input: EveningInput): DrillPart {
  const { part, rung, variant, random, model } = choice;
  const repeated = variant === 'again' ? partOn(rung.id, input.before) : undefined;
  const { seconds } = part;
  if (rung.kind === 'facts') {
    const { strand, id } = rung;
    return {
      kind: 'facts',
      strand,
      rung: id,
      seconds,
      cards: cardsOf(rung, repeated, choice, input),
    };
  }
  const { memory, today, lastStarts } = input;
  const lastStart = repeated?.kind === 'run' ? repeated.start : lastStarts.get(rung.id);
  const cards = cardsIn(variant, part.cards);
  return chooseRun({ rung, cards, seconds, lastStart, memory, today, random, model });
}

function cardsOf(
  rung: FactRung,
  repeated: DrillPart | undefined,
  { part, newLimit, variant, random, model }: PartChoice,
  { memory, today }: EveningInput,
): readonly FactId[] {
  const entries = rungTable(rung);
  const count = Math.min(cardsIn(variant, part.cards), entries.length);
  if (repeated?.kind === 'facts' && askedOf(repeated) === count) {
    return repeatCards(repeated.cards, random);
  }
  if (variant === 'catch_up')
    return chooseCatchUp({ entries, count, memory, today, random, model });
  return chooseFacts({ entries, count, newLimit, memory, today, random, model });
}

function partOn(rung: RungId, drill: Drill | undefined): DrillPart | undefined {
  return drill?.parts.find((part) => part.rung === rung);
}

function existingRung(id: RungId): Rung {
  const rung = rungById(id);
  if (rung === null) throw new RangeError(`no such rung: ${id}`);
  return rung;
}
