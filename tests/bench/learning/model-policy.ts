import { numberOf } from '../../../drills/calendar/school-day.ts';
import { difficultyOf } from '../../../drills/facts/difficulty.ts';
import { type Relative, relativesOf } from '../../../drills/facts/relatives.ts';
import {
  composeEvening,
  type FactId,
  type FactMemory,
  type Mark,
  type MemoryModel,
  remember,
} from '../../../drills/index.ts';
import type { Policy } from './policy.ts';

/** What families get: evenings by the real composer, from a memory kept as the project keeps it, with this model. */
export function byModel(model: MemoryModel, name = model.name): Policy {
  return {
    name,
    start: () => {
      const memory = new Map<FactId, FactMemory>();
      return {
        cards: ({ plan, today, seed }) =>
          composeEvening({ plan, memory, lastStarts: new Map(), today, seed }, model).parts.map(
            (part) => (part.kind === 'facts' ? part.cards : []),
          ),
        marked: (marks) => {
          for (const mark of marks) learnMark(memory, { ...mark, way: 'unmissed' }, model);
        },
      };
    },
  };
}

/** One step of rebuildMemory; a test holds the two together. */
export function learnMark(memory: Map<FactId, FactMemory>, mark: Mark, model: MemoryModel): void {
  memory.set(mark.fact, remember(memory.get(mark.fact), mark, model));
  const day = numberOf(mark.day);
  for (const { fact, share } of knownRelatives(mark.fact)) {
    const before = memory.get(fact) ?? unasked(fact, model);
    const { right, way } = mark;
    memory.set(fact, { ...before, state: model.learn(before.state, { day, right, way, share }) });
  }
}

function unasked(fact: FactId, model: MemoryModel): FactMemory {
  const state = model.start(difficultyOf(fact));
  return { asked: 0, right: 0, streak: 0, lastDay: null, lastRight: false, state };
}

const relatives = new Map<FactId, readonly Relative[]>();

/** Spelled out once: a simulation asks for them millions of times. */
function knownRelatives(fact: FactId): readonly Relative[] {
  const known = relatives.get(fact) ?? relativesOf(fact);
  relatives.set(fact, known);
  return known;
}
