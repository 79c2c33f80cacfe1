import { difficultyOf } from '../facts/difficulty.ts';
import type { Difficulty } from '../facts/difficulty-scale.ts';
import type { FactId } from '../facts/fact-id.ts';
import { familyOf } from '../facts/near-twin.ts';
import { hasNought } from '../facts/nought.ts';
import type { FactRung } from './rung.ts';

/** One fact of a rung with what can be said of it before any child is known. Facts of one `family` are near twins. */
export interface RungEntry {
  readonly fact: FactId;
  readonly family: string;
  readonly hasNought: boolean;
  readonly difficulty: Difficulty;
}

const TABLES = new WeakMap<FactRung, readonly RungEntry[]>();

/**
 * A rung's facts in their own order, each with its family, nought and difficulty. Composing an evening asks for this very
 * often, so it is worked out once for each rung; the same rung gives the same list.
 *
 * @example
 * rungTable(rung)[0]; // { fact: 'double:1', family: '1&1', hasNought: false, difficulty: 1 } for doubles.to5
 */
export function rungTable(rung: FactRung): readonly RungEntry[] {
  const known = TABLES.get(rung);
  if (known !== undefined) return known;
  const table = rung.facts.map((fact) => ({
    fact,
    family: familyOf(fact),
    hasNought: hasNought(fact),
    difficulty: difficultyOf(fact),
  }));
  TABLES.set(rung, table);
  return table;
}
