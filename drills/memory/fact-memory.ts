import { numberOf, type SchoolDay } from '../calendar/school-day.ts';
import { difficultyOf } from '../facts/difficulty.ts';
import type { FactId } from '../facts/fact-id.ts';
import { relativesOf } from '../facts/relatives.ts';
import { MEMORY_MODEL } from './default-model.ts';
import type { Evidence, MemoryModel, MemoryState } from './model.ts';

/**
 * What is known about one child and one fact, folded from that child's marks. All but `state` come from the fact's own marks:
 * `streak` counts the latest right ones in a row, `lastRight` follows the mark given last, `lastDay` is the latest day asked.
 * `state` is the model's belief and also holds what relatives lend. A fact that only relatives spoke of has `asked` 0,
 * `lastDay` null and `lastRight` false.
 */
export interface FactMemory {
  readonly asked: number;
  readonly right: number;
  readonly streak: number;
  readonly lastDay: SchoolDay | null;
  readonly lastRight: boolean;
  readonly state: MemoryState;
}

/** One mark that counts, or one step of a counting run. Where a mark was corrected, only the correction belongs here. */
export interface Mark {
  readonly fact: FactId;
  readonly day: SchoolDay;
  readonly right: boolean;
  readonly way: Evidence['way'];
}

/**
 * Memory of one fact after one more mark of its own. When an earlier day is marked late, `lastRight` follows the mark and
 * `lastDay` stays at the later day.
 *
 * @example
 * remember(undefined, { fact: 'add:3+4', day, right: true, way: 'card' }, boxes);
 * // { asked: 1, right: 1, streak: 1, lastDay: day, lastRight: true, state: [2, 20705, 2] } on 2026-09-09
 */
export function remember(
  before: FactMemory | undefined,
  mark: Mark,
  model: MemoryModel = MEMORY_MODEL,
): FactMemory {
  const { fact, day, right, way } = mark;
  const { asked, right: rights, streak, lastDay, state } = before ?? unasked(fact, model);
  return {
    asked: asked + 1,
    right: rights + (right ? 1 : 0),
    streak: right ? streak + 1 : 0,
    lastDay: lastDay !== null && lastDay > day ? lastDay : day,
    lastRight: right,
    state: model.learn(state, { day: numberOf(day), right, way, share: 1 }),
  };
}

/**
 * One child's whole memory from all marks that count, in the order they were given. Each mark also lends to the relatives of
 * its fact, one hop and no further; a relative that was never asked gets an entry too, because its state matters to the choice
 * of new facts. A fact's memory follows from its own marks and its relatives' alone, in their order. `before` is what earlier
 * marks, which may be gone, have given already: folding in two steps gives the same as folding all at once.
 *
 * @example
 * rebuildMemory([]).size; // 0
 */
export function rebuildMemory(
  marks: readonly Mark[],
  model: MemoryModel = MEMORY_MODEL,
  before: ReadonlyMap<FactId, FactMemory> = new Map(),
): Map<FactId, FactMemory> {
  const memory = new Map(before);
  for (const mark of marks) {
    memory.set(mark.fact, remember(memory.get(mark.fact), mark, model));
    for (const { fact, share } of relativesOf(mark.fact)) {
      const known = memory.get(fact) ?? unasked(fact, model);
      const { right, way } = mark;
      const state = model.learn(known.state, { day: numberOf(mark.day), right, way, share });
      memory.set(fact, { ...known, state });
    }
  }
  return memory;
}

function unasked(fact: FactId, model: MemoryModel): FactMemory {
  const state = model.start(difficultyOf(fact));
  return { asked: 0, right: 0, streak: 0, lastDay: null, lastRight: false, state };
}
