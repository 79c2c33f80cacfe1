import fc from 'fast-check';
import {
  addDays,
  createRandom,
  type EveningInput,
  type FactId,
  type FactMemory,
  type Mark,
  RUNGS,
  type RungId,
  rebuildMemory,
  rungById,
  type WeekPlan,
} from '../../../drills/index.ts';
import { runStarts } from '../../../drills/ladder/run-starts.ts';
import { day } from './day.ts';

export const TODAY = day('2026-09-11');

/** How much of a plan's facts a child was asked and, of these, how much it missed last time. */
interface Knowledge {
  readonly asked: number;
  readonly missed: number;
  readonly chance: number;
}

const anyPlan: fc.Arbitrary<WeekPlan> = fc
  .uniqueArray(
    fc.record({
      rung: fc.constantFrom(...RUNGS).map(({ id }) => id),
      cards: fc.integer({ min: 3, max: 20 }),
      seconds: fc.integer({ min: 2, max: 15 }),
    }),
    { minLength: 1, maxLength: 6, selector: ({ rung }) => rung },
  )
  .map((parts) => ({ parts }));

const anyKnowledge: fc.Arbitrary<Knowledge> = fc.record({
  asked: fc.constantFrom(0, 0.1, 0.5, 0.9, 1),
  missed: fc.constantFrom(0, 0.1, 0.5, 1),
  chance: fc.nat(),
});

/** Any plan that could be sent, beside any memory of its facts and any earlier starts of its runs. */
export const anyEvening: fc.Arbitrary<EveningInput> = fc
  .record({ plan: anyPlan, knowledge: anyKnowledge, seed: fc.string() })
  .map(({ plan, knowledge, seed }) => ({
    plan,
    memory: memoryOf(plan, knowledge),
    lastStarts: startsOf(plan, knowledge),
    today: TODAY,
    seed,
  }));

const SAMPLE: FactId = 'add:3+4';

/** Memories of one to four marks, the last right or missed, from the day after today to forty days ago. */
const ASKED = { right: samples(true), missed: samples(false) };

/** What is known of a fact that only its relatives were asked. */
const LENT = rebuildMemory([mark(true, 3)]).get('add:4+3');

function samples(right: boolean): readonly FactMemory[] {
  return Array.from({ length: 42 }, (_, at) => {
    const before = Array.from({ length: at % 4 }, (_, more) => mark(more % 2 === 0, at + 3));
    const memory = rebuildMemory([...before, mark(right, at - 1)]).get(SAMPLE);
    if (memory === undefined) throw new Error('a marked fact is not remembered');
    return memory;
  });
}

function mark(right: boolean, daysAgo: number): Mark {
  return { fact: SAMPLE, day: addDays(TODAY, -daysAgo), right, way: 'card' };
}

function memoryOf({ parts }: WeekPlan, { asked, missed, chance }: Knowledge) {
  const random = createRandom(`memory ${chance}`);
  const memory = new Map<FactId, FactMemory>();
  for (const fact of parts.flatMap(({ rung }) => factsOf(rung))) {
    const pool = random.next() < missed ? ASKED.missed : ASKED.right;
    const known = random.next() < asked ? pool[random.int(pool.length)] : undefined;
    const spokenOf = known ?? (random.int(4) === 0 ? LENT : undefined);
    if (spokenOf !== undefined) memory.set(fact, spokenOf);
  }
  return memory;
}

/** A rung's facts, or every step that a run on it may take. */
function factsOf(id: RungId): readonly FactId[] {
  const rung = rungById(id);
  if (rung?.kind === 'facts') return rung.facts;
  if (rung?.kind !== 'run') return [];
  const sign = rung.direction === 'on' ? '+' : '-';
  return runStarts(rung, 2).map((start): FactId => `next:${start}${sign}${rung.step}`);
}

function startsOf({ parts }: WeekPlan, { chance }: Knowledge): Map<RungId, number> {
  const random = createRandom(`starts ${chance}`);
  const starts = new Map<RungId, number>();
  for (const { rung: id, cards } of parts) {
    const rung = rungById(id);
    if (rung?.kind !== 'run') continue;
    const possible = runStarts(rung, cards);
    // A start that is no longer possible counts for nothing: the plan may have asked for fewer numbers then.
    const last = random.int(3) === 0 ? rung.limit : possible[random.int(possible.length + 1)];
    if (last !== undefined) starts.set(id, last);
  }
  return starts;
}
