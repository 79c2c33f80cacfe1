import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { FactRung, Rung, RungId } from '../ladder/rung.ts';
import { rungTable } from '../ladder/rung-table.ts';
import { rungById } from '../ladder/rungs.ts';
import { MEMORY_MODEL } from '../memory/default-model.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel } from '../memory/model.ts';
import { adjustPlan } from './adjust-plan.ts';
import { type Adjustment, isAdjusted, UNADJUSTED } from './adjustment.ts';
import { chooseCatchUp } from './choose-catch-up.ts';
import { chooseFacts } from './choose-facts.ts';
import { chooseMixed } from './choose-mixed.ts';
import { chooseRun } from './choose-run.ts';
import type { Drill, DrillPart } from './drill.ts';
import { newFactsPerPart } from './new-facts.ts';
import { askedOf, mixKey } from './part-size.ts';
import { type PlanPart, rungsInPart } from './plan-part.ts';
import { createRandom, type Random } from './random.ts';
import { repeatCards } from './repeat-cards.ts';
import { cardsIn, type Variant } from './variant.ts';
import { maxCardsOf, type WeekPlan } from './week-plan.ts';

/** Stored with every drill. It goes up whenever the same input would give another drill, so with another memory model too. */
export const COMPOSER_VERSION = 2;

/**
 * What an evening is made from. `lastStarts` holds where this child's latest run on each rung began;
 * `seed` is any text that is the child's and the day's own. `variant` is `full` when left out; `before` is the drill that
 * `again` repeats, and no other variant looks at it. `adjustment` is how this child's evenings differ from the plan; left out,
 * they do not.
 */
export interface EveningInput {
  readonly plan: WeekPlan;
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly lastStarts: ReadonlyMap<RungId, number>;
  readonly today: SchoolDay;
  readonly seed: string;
  readonly variant?: Variant;
  readonly before?: Drill;
  readonly adjustment?: Adjustment;
}

/**
 * One child's drill for one day. The blueprint is the plan's, the same for the whole class; which facts fill it is the
 * child's own (see chooseFacts and chooseRun). The same input gives the same drill on any machine, in any order of
 * the maps' entries. A part asks for as many cards as planned, or the rung's whole set when that is smaller; for the
 * variants see {@link Variant}. `again` repeats the cards of each part that is still planned with the same blueprint, and
 * composes the others anew. A mixed part shuffles the cards of its rungs (see chooseMixed).
 *
 * Throws RangeError for a plan with a rung that does not exist, and for `again` without a drill before.
 *
 * @example
 * composeEvening({ plan: { parts: [] }, memory, lastStarts, today, seed }); // { version: 2, parts: [] }
 */
export function composeEvening(input: EveningInput, model: MemoryModel = MEMORY_MODEL): Drill {
  const { memory, variant = 'full', before, adjustment = UNADJUSTED } = input;
  const plan = adjustPlan(input.plan, adjustment);
  if (variant === 'again' && before === undefined) {
    throw new RangeError('the variant again needs the drill before, to take its cards from');
  }
  const rungs = plan.parts.map((part) => rungsInPart(part).map(existingRung));
  const newLimit = newFactsPerPart(rungs, memory, variant);
  const parts = plan.parts.map((part, index) => {
    // Each part has its own chance, so that a change to one leaves the others as they were.
    const random = createRandom(`${input.seed}|${index}|${rungsInPart(part).join('+')}`);
    const choice = { part, rungs: rungs[index] ?? [], newLimit, variant, random, model };
    return composePart(choice, input);
  });
  return {
    version: COMPOSER_VERSION,
    ...(variant === 'full' ? {} : { variant }),
    ...(isAdjusted(adjustment) ? { adjusted: adjustment } : {}),
    parts,
  };
}

interface PartChoice {
  readonly part: PlanPart;
  readonly rungs: readonly Rung[];
  readonly newLimit: number;
  readonly variant: Variant;
  readonly random: Random;
  readonly model: MemoryModel;
}

function composePart(choice: PartChoice, input: EveningInput): DrillPart {
  const { part, rungs, variant, random, model } = choice;
  const { rung: id, also, seconds } = part;
  const repeated = variant === 'again' ? partLike(part, input.before) : undefined;
  const rung = existingRung(id);
  if (rung.kind === 'facts') {
    const cards = cardsOf(rungs.filter(isFactRung), repeated, choice, input);
    const { strand } = rung;
    return { kind: 'facts', strand, rung: id, ...(also ? { also } : {}), seconds, cards };
  }
  const { memory, today, lastStarts } = input;
  const lastStart = repeated?.kind === 'run' ? repeated.start : lastStarts.get(rung.id);
  const cards = cardsIn(variant, part.cards);
  return chooseRun({ rung, cards, seconds, lastStart, memory, today, random, model });
}

function cardsOf(
  rungs: readonly FactRung[],
  repeated: DrillPart | undefined,
  { part, newLimit, variant, random, model }: PartChoice,
  { memory, today }: EveningInput,
): readonly FactId[] {
  const [rung] = rungs;
  const entries = rung ? rungTable(rung) : [];
  const most = rungs.length > 1 ? maxCardsOf(part) : entries.length;
  const count = Math.min(cardsIn(variant, part.cards), most);
  if (repeated?.kind === 'facts' && askedOf(repeated) === count) {
    return repeatCards(repeated.cards, random);
  }
  if (rungs.length > 1) {
    return chooseMixed({ rungs, count, newLimit, variant, memory, today, random, model });
  }
  if (variant === 'catch_up')
    return chooseCatchUp({ entries, count, memory, today, random, model });
  return chooseFacts({ entries, count, newLimit, memory, today, random, model });
}

/** The part of a drill with the same rungs, in whatever order they were named. */
function partLike(part: PlanPart, drill: Drill | undefined): DrillPart | undefined {
  const key = mixKey(part);
  return drill?.parts.find((each) => mixKey(each) === key);
}

function isFactRung(rung: Rung): rung is FactRung {
  return rung.kind === 'facts';
}

function existingRung(id: RungId): Rung {
  const rung = rungById(id);
  if (rung === null) throw new RangeError(`no such rung: ${id}`);
  return rung;
}
