import type { FactId, FactMemory, MemoryModel, MemoryState } from '../../../drills/index.ts';
import { day } from './day.ts';

/** A model whose states say outright what it thinks: the chance of a right answer, and the worth of asking. */
export const TABLE_MODEL: MemoryModel = {
  name: 'table',
  start: () => [0.5, 1],
  learn: (state) => state,
  recall: ([recall = 0]) => recall,
  worth: ([, worth = 0]) => worth,
};

/** The memory of a fact that was asked before, as {@link TABLE_MODEL} sees it. */
export function askedAs(...state: readonly [recall: number, worth: number]): FactMemory {
  return { asked: 1, right: 1, streak: 1, lastDay: day('2026-09-07'), lastRight: true, state };
}

/** The memory of a fact of which only relatives spoke. */
export function lentAs(...state: readonly [recall: number, worth: number]): FactMemory {
  return { asked: 0, right: 0, streak: 0, lastDay: null, lastRight: false, state };
}

/** What the model thinks of a fact in such a memory. */
export function stateIn(memory: ReadonlyMap<FactId, FactMemory>, fact: FactId): MemoryState {
  return memory.get(fact)?.state ?? TABLE_MODEL.start(0);
}
