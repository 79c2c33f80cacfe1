import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import { familyOf } from '../facts/near-twin.ts';
import { placeOf } from '../ladder/neighbour-rung.ts';
import type { FactRung } from '../ladder/rung.ts';
import { type RungEntry, rungTable } from '../ladder/rung-table.ts';
import { rungById } from '../ladder/rungs.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel } from '../memory/model.ts';
import { chooseCatchUp } from './choose-catch-up.ts';
import { chooseFacts } from './choose-facts.ts';
import type { FactPart } from './drill.ts';
import { keepTwinsApart } from './keep-twins-apart.ts';
import { rungsInPart } from './plan-part.ts';
import type { Random } from './random.ts';
import type { Variant } from './variant.ts';

/** What a mixed part is filled from. `newLimit` is the whole part's (see chooseFacts). */
export interface MixedChoice {
  readonly rungs: readonly FactRung[];
  readonly count: number;
  readonly newLimit: number;
  readonly variant: Variant;
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly today: SchoolDay;
  readonly random: Random;
  readonly model: MemoryModel;
}

/**
 * The cards of a mixed part, in the order they are shown; `count` of them, or all there are.
 *
 * Each rung gives as many as the others, one more where that does not come out even and more where another has too few; which
 * ones is chosen as for a part of that rung alone, and its share of new facts is smaller by as much. Then all are shuffled, near
 * twins apart. A fact that two rungs have is the easier one's, so that a step mixed into one that holds all its facts has its share.
 *
 * After missed evenings each rung's cards are chosen for that (see chooseCatchUp), and the part opens with the surest of all.
 */
export function chooseMixed(choice: MixedChoice): FactId[] {
  const { rungs, count, variant, newLimit, memory, today, random, model } = choice;
  const tables = tablesOf(rungs);
  const shares = sharesOf(
    count,
    tables.map(({ length }) => length),
  );
  const each = { memory, today, random, model };
  if (variant === 'catch_up') {
    const chosen = tables.flatMap((entries, at) =>
      chooseCatchUp({ ...each, entries, count: shares[at] ?? 0 }),
    );
    const entries = tables.flat().filter(({ fact }) => chosen.includes(fact));
    // Chosen once more from just these, they come in an order with an easy start.
    return chooseCatchUp({ ...each, entries, count: entries.length });
  }
  const cards = tables.flatMap((entries, at) =>
    chooseFacts({
      ...each,
      entries,
      count: shares[at] ?? 0,
      newLimit: newLimit / rungs.length,
    }),
  );
  const shuffled = random.shuffle(cards);
  return keepTwinsApart(shuffled, shuffled.map(familyOf));
}

/**
 * As many facts as a part has cards, drawn by chance from the whole of its rungs, as many from each: for a drill that is nobody's
 * own. In the order drawn; a mixed part's are shuffled.
 *
 * @example
 * drawFacts(part, createRandom('wren')).length; // 10 for a part of ten cards
 */
export function drawFacts(part: FactPart, random: Random): FactId[] {
  const count = part.cards.length;
  const rungs = rungsInPart(part).flatMap((id): FactRung[] => {
    const rung = rungById(id);
    return rung?.kind === 'facts' ? [rung] : [];
  });
  const tables = tablesOf(rungs).map((entries) => entries.map(({ fact }) => fact));
  const shares = sharesOf(
    count,
    tables.map(({ length }) => length),
  );
  const drawn = tables.flatMap((facts, at) => random.shuffle(facts).slice(0, shares[at]));
  return tables.length > 1 ? random.shuffle(drawn) : drawn;
}

/** Every rung's facts, from the easiest rung up, in whatever order they were named; without those that an easier one has. */
function tablesOf(rungs: readonly FactRung[]): RungEntry[][] {
  const taken = new Set<FactId>();
  const fromEasiest = rungs.toSorted((one, other) => placeOf(one) - placeOf(other));
  return fromEasiest.map((rung) => {
    const own = rungTable(rung).filter(({ fact }) => !taken.has(fact));
    for (const { fact } of own) taken.add(fact);
    return own;
  });
}

/**
 * Shares out `count` cards over sets of these sizes, as evenly as they allow, the earlier sets first.
 *
 * @example
 * sharesOf(10, [20, 3, 20]); // [4, 3, 3]
 */
export function sharesOf(count: number, sizes: readonly number[]): number[] {
  const shares = sizes.map(() => 0);
  let left = Math.min(
    count,
    sizes.reduce((total, size) => total + size, 0),
  );
  while (left > 0) {
    for (const [at, size] of sizes.entries()) {
      const share = shares[at] ?? 0;
      if (left === 0 || share >= size) continue;
      shares[at] = share + 1;
      left -= 1;
    }
  }
  return shares;
}
