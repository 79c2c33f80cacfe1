import { numberOf, type SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import { shapeOf } from '../facts/fact-shape.ts';
import { familyOf } from '../facts/near-twin.ts';
import { MEMORY_MODEL } from '../memory/default-model.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel } from '../memory/model.ts';

/** More than ten are no minute at the table any more; fewer than five are soon said (our choice, no source). */
const MOST = 10;
const FEWEST = 5;
/** Steps of one count are much alike: so many of a stride are enough (our choice, no source). */
const MOST_OF_A_COUNT = 2;
/** A fact that is more likely than this to be right now needs no help. */
const SURE = 0.9;

/**
 * Five to ten facts to say aloud with a child, the one it is least sure of today first: those it was asked and would get wrong
 * more than once in ten, one of a family (7 + 8 and 8 + 7 give each other away) and two steps of a count. When fewer than five
 * are so unsure, the least sure of the others come after them; a child who was asked less has fewer. Ties go by spelling.
 *
 * @example
 * factsToPractise(new Map(), today); // []
 */
export function factsToPractise(
  memory: ReadonlyMap<FactId, FactMemory>,
  today: SchoolDay,
  model: MemoryModel = MEMORY_MODEL,
): FactId[] {
  const ranked = leastSure(memory, today, model);
  const unsure = ranked.filter(({ chance }) => chance < SURE).length;
  return ranked.slice(0, Math.min(MOST, Math.max(FEWEST, unsure))).map(({ fact }) => fact);
}

/** What a fact shares its place on the list with, and how many of those there is room for. */
function groupOf(fact: FactId): { readonly key: string; readonly most: number } {
  const shape = shapeOf(fact);
  return shape.kind === 'next'
    ? { key: `next ${shape.step}`, most: MOST_OF_A_COUNT }
    : { key: familyOf(fact), most: 1 };
}

/**
 * The facts a child was asked itself with the chance that each is right today, the least sure first: one of a family, and two
 * steps of a count.
 */
export function leastSure(
  memory: ReadonlyMap<FactId, FactMemory>,
  today: SchoolDay,
  model: MemoryModel,
): { readonly fact: FactId; readonly chance: number }[] {
  const day = numberOf(today);
  const seen = new Map<string, number>();
  return [...memory]
    .filter(([, { asked }]) => asked > 0)
    .map(([fact, { state }]) => ({ fact, chance: model.recall(state, day) }))
    .sort((one, other) => one.chance - other.chance || (one.fact < other.fact ? -1 : 1))
    .filter(({ fact }) => {
      const { key, most } = groupOf(fact);
      const before = seen.get(key) ?? 0;
      seen.set(key, before + 1);
      return before < most;
    });
}
