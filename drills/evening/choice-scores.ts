import type { FactId } from '../facts/fact-id.ts';
import type { RungEntry } from '../ladder/rung-table.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel, MemoryState } from '../memory/model.ts';
import type { Random } from './random.ts';

/** What the model thinks of each fact of a rung, in the rung's order. Plain arrays of numbers, because this runs for every child. */
export interface CardScores {
  /** The chance of a right answer today. */
  readonly recall: Float64Array;
  /** How much good asking does, told apart by chance where the model sees no difference. */
  readonly worth: Float64Array;
  /** 1 for a fact that the child itself was never asked. */
  readonly isNew: Uint8Array;
}

/** Too small to matter beside any real difference of worth. */
const HAIR = 1e-9;

/**
 * Scores all facts of a rung. Chance is drawn in the rung's own order, so that the order in which marks arrived plays no part.
 * A fact nothing is known of has the state a model starts with at its difficulty.
 */
export function scoreCards(
  entries: readonly RungEntry[],
  memory: ReadonlyMap<FactId, FactMemory>,
  day: number,
  model: MemoryModel,
  random: Random,
): CardScores {
  const size = entries.length;
  const recall = new Float64Array(size);
  const worth = new Float64Array(size);
  const isNew = new Uint8Array(size);
  const starts: MemoryState[] = [];
  for (let at = 0; at < size; at += 1) {
    const entry = entries[at];
    if (entry === undefined) continue;
    const { fact, difficulty } = entry;
    const known = memory.get(fact);
    let state = known?.state ?? starts[difficulty];
    if (state === undefined) {
      state = model.start(difficulty);
      starts[difficulty] = state;
    }
    recall[at] = model.recall(state, day);
    worth[at] = model.worth(state, day) + HAIR * random.next();
    isNew[at] = known === undefined || known.lastDay === null ? 1 : 0;
  }
  return { recall, worth, isNew };
}
