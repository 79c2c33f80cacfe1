import { numberOf } from '../../../drills/calendar/school-day.ts';
import { difficultyOf } from '../../../drills/facts/difficulty.ts';
import {
  addDays,
  createRandom,
  type EveningInput,
  type FactId,
  type FactMemory,
  MEMORY_MODEL,
  RUNGS,
  type RungId,
  rungById,
  runSteps,
  type SchoolDay,
  type WeekPlan,
} from '../../../drills/index.ts';
import { day } from '../../support/term.ts';

/** An ordinary week: three parts of ten cards and one run of ten numbers. */
export const BENCH_PLAN: WeekPlan = {
  parts: [
    { rung: 'bonds.to10', cards: 10, seconds: 3 },
    { rung: 'takeaway.to10', cards: 10, seconds: 3 },
    { rung: 'bonds.bridging', cards: 10, seconds: 3 },
    { rung: 'counting.fives', cards: 10, seconds: 3 },
  ],
};

/** How many facts a child of the bench knows, at least and at most. */
export const KNOWN_FACTS = { min: 100, max: 250 } as const;

const TODAY = day('2026-11-25');
const LONGEST_UNSEEN = 60;
const MEMORIES = 4096;

/**
 * The children of the bench, each with a memory of its own: other facts, other states, other objects and even other texts,
 * as they come from a database. The same number gives the same child.
 */
export function createChildren(): (number: number) => EveningInput {
  const facts = factsInReach();
  const memories = createMemories();
  return (number) => {
    const random = createRandom(`bench child ${number}`);
    const span = KNOWN_FACTS.max - KNOWN_FACTS.min + 1;
    const known = random.shuffle(facts).slice(0, KNOWN_FACTS.min + random.int(span));
    const memory = new Map<FactId, FactMemory>();
    for (const fact of known) {
      const drawn = memories[random.int(memories.length)];
      if (drawn !== undefined) memory.set(copyOf(fact), { ...drawn, state: [...drawn.state] });
    }
    const lastStarts = new Map<RungId, number>([['counting.fives', 5 * random.int(31)]]);
    return { plan: BENCH_PLAN, memory, lastStarts, today: TODAY, seed: `${number} ${TODAY}` };
  };
}

/** What a class on this plan has met: the facts and steps of the plan first, then of earlier rungs, to about 260. */
function factsInReach(): readonly FactId[] {
  const planned = BENCH_PLAN.parts.map(({ rung }) => rungById(rung));
  const facts = [...planned, ...RUNGS].flatMap((rung) => {
    if (rung === null) return [];
    if (rung.kind === 'facts') return rung.facts;
    if (!planned.includes(rung)) return [];
    return runSteps({ start: 0, step: rung.step, length: rung.limit / rung.step + 1 });
  });
  return [...new Set(facts)].slice(0, KNOWN_FACTS.max + 10);
}

/** Memories as a term of practice leaves them: one to six marks, mostly right, the last within sixty days. */
function createMemories(): readonly FactMemory[] {
  const random = createRandom('bench memories');
  return Array.from({ length: MEMORIES }, () => {
    const marks = 1 + random.int(6);
    const last = random.int(LONGEST_UNSEEN);
    const days = Array.from({ length: marks }, (_, at) =>
      addDays(TODAY, -last - 3 * (marks - 1 - at)),
    );
    return fold(days.map((on) => ({ on, right: random.next() < 0.85 })));
  });
}

function fold(marks: readonly { on: SchoolDay; right: boolean }[]): FactMemory {
  let state = MEMORY_MODEL.start(difficultyOf('add:3+4'));
  for (const { on, right } of marks) {
    state = MEMORY_MODEL.learn(state, { day: numberOf(on), right, way: 'unmissed', share: 1 });
  }
  const lastMissed = marks.findLastIndex(({ right }) => !right);
  return {
    asked: marks.length,
    right: marks.filter(({ right }) => right).length,
    streak: marks.length - 1 - lastMissed,
    lastDay: marks.at(-1)?.on ?? null,
    lastRight: marks.at(-1)?.right ?? false,
    state,
  };
}

/** The same text as a string of its own: a look-up must compare it, as it must with what a database gives. */
function copyOf(fact: FactId): FactId {
  return Buffer.from(fact, 'latin1').toString('latin1') as FactId;
}
