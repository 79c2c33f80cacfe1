import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeSecurity } from '../../../drills/digest/judge-security.ts';
import {
  addDays,
  type FactId,
  type Mark,
  MEMORY_MODEL,
  type PartScore,
  type Rung,
  type RungId,
  rebuildMemory,
  runEvidence,
  rungById,
  type SchoolDay,
} from '../../../drills/index.ts';
import type { MemoryModel } from '../../../drills/memory/model.ts';
import { MODELS } from '../../../drills/memory/models.ts';
import { FRIDAY, score, WEEK } from '../support/week.ts';

const HALVES = rungOf('halves.to20');
const FIVES = rungOf('counting.fives');

function rungOf(id: RungId): Rung {
  const rung = rungById(id);
  if (rung === null) throw new Error(`no such rung: ${id}`);
  return rung;
}

function factsOf(rung: Rung, count: number): readonly FactId[] {
  if (rung.kind === 'run') throw new Error('a run has no cards');
  return rung.facts.slice(0, count);
}

/** Marks of the first facts of a rung on one day: all right but the first `missed`. */
function marksOn(day: SchoolDay, rung: Rung, asked: number, missed = 0): Mark[] {
  return factsOf(rung, asked).map((fact, index) => ({
    fact,
    day,
    right: index >= missed,
    way: 'unmissed',
  }));
}

const judge = (
  marks: readonly Mark[],
  parts: readonly PartScore[],
  { rung = HALVES, today = FRIDAY, model = MEMORY_MODEL } = {},
) => judgeSecurity(rung, { memory: rebuildMemory(marks, model), parts }, today, model);

/** A week of evenings on halves to 20, all with the same score of ten. */
function weekOf(right: number, model?: MemoryModel) {
  const marks = WEEK.flatMap((day) => marksOn(day, HALVES, 10, 10 - right));
  const parts = WEEK.map(() => score('halves.to20', right, 10));
  return judge(marks, parts, model ? { model } : {});
}

describe.each([...MODELS.values()])('with the memory model $name', (model) => {
  test('a week of ten right of ten is secure', () => {
    expect(weekOf(10, model).level).toBe('secure');
  });

  test('a week of eight right of ten is neither secure nor clearly not', () => {
    expect(weekOf(8, model).level).toBe('in_between');
  });

  test('a week of six right of ten is not yet secure', () => {
    expect(weekOf(6, model).level).toBe('not_yet');
  });

  test('one more right answer never makes a child less sure', () => {
    const sure = Array.from({ length: 11 }, (_, right) => weekOf(right, model).sure);
    expect(sure).toEqual(sure.toSorted((one, other) => one - other));
  });
});

describe('how sure a judgement is', () => {
  test('without memory it is the plain Beta posterior of the week: 10 of 10 is Beta(11, 1)', () => {
    // 1 - 0.8 to the eleventh = 0.914101, mean 11 / 12.
    const { expected, sure, level, answers } = judge([], [score('halves.to20', 10, 10)]);
    expect(answers).toBe(10);
    expect(sure).toBeCloseTo(0.914101, 6);
    expect(expected).toBeCloseTo(11 / 12, 9);
    expect(level).toBe('secure');
  });

  test('memory counts as eight answers beside the week’s', () => {
    const marks = marksOn(FRIDAY, HALVES, 10);
    const [first] = [...rebuildMemory(marks).values()];
    const recalls = [...rebuildMemory(marks).values()]
      .filter(({ asked }) => asked > 0)
      .map(({ state }) => MEMORY_MODEL.recall(state, 20_707));
    const mean = recalls.reduce((total, chance) => total + chance, 0) / recalls.length;
    expect(first?.lastDay).toBe(FRIDAY);
    // 2026-09-11 is day 20707. (8 x mean + 10) / (8 + 10), by hand from the definition.
    expect(judge(marks, [score('halves.to20', 10, 10)]).expected).toBeCloseTo(
      (8 * mean + 10) / 18,
      9,
    );
  });

  test('facts missed last week and not asked since weigh against this week’s good ones', () => {
    const past = marksOn(addDays(FRIDAY, -7), HALVES, 10, 6);
    const now = marksOn(FRIDAY, HALVES, 10).slice(6);
    const parts = [score('halves.to20', 4, 4)];
    expect(judge([...past, ...now], parts).expected).toBeLessThan(judge(now, parts).expected);
  });

  test('memory fades: the same marks are surer today than three weeks later', () => {
    const marks = marksOn(FRIDAY, HALVES, 10);
    const parts = [score('halves.to20', 10, 10)];
    const later = judge(marks, parts, { today: addDays(FRIDAY, 21) });
    expect(later.expected).toBeLessThan(judge(marks, parts).expected);
  });

  test('a fact that only a relative spoke of is no evidence', () => {
    const doubles = factsOf(rungOf('doubles.to10'), 10).map((fact) => ({
      fact,
      day: FRIDAY,
      right: false,
      way: 'card' as const,
    }));
    const parts = [score('halves.to20', 10, 10)];
    const own = marksOn(FRIDAY, HALVES, 10);
    expect(judge([...doubles, ...own], parts).answers).toBe(10);
    expect(judge(doubles, parts)).toEqual(judge([], parts));
  });
});

describe('too few answers', () => {
  test('seven answers are too few, however good, and eight are enough', () => {
    const seven = judge(marksOn(FRIDAY, HALVES, 7), [score('halves.to20', 7, 7)]);
    expect(seven).toMatchObject({ level: 'too_few', answers: 7 });
    const eight = judge(marksOn(FRIDAY, HALVES, 8), [score('halves.to20', 8, 8)]);
    expect(eight).toMatchObject({ level: 'secure', answers: 8 });
  });

  test('answers of earlier weeks count towards the eight', () => {
    const past = marksOn(addDays(FRIDAY, -7), HALVES, 8);
    const now = marksOn(FRIDAY, HALVES, 5);
    const parts = [score('halves.to20', 5, 5)];
    expect(judge(now, parts)).toMatchObject({ level: 'too_few', answers: 5 });
    const both = judge([...past, ...now], parts);
    expect(both.answers).toBe(13);
    expect(both.level).not.toBe('too_few');
  });

  test('three facts asked again and again are too few of a rung of eleven', () => {
    const marks = WEEK.flatMap((day) => marksOn(day, HALVES, 3));
    const parts = WEEK.map(() => score('halves.to20', 3, 3));
    expect(judge(marks, parts)).toMatchObject({ level: 'too_few', answers: 15 });
  });

  test('a rung of fewer than eight facts needs all of them', () => {
    const small = rungOf('doubles.to5');
    const all = small.kind === 'facts' ? small.facts.length : 0;
    expect(all).toBeLessThan(8);
    const asked = (count: number) =>
      judge(
        WEEK.flatMap((day) => marksOn(day, small, count)),
        WEEK.map(() => score('doubles.to5', count, count)),
        { rung: small },
      ).level;
    expect(asked(all)).toBe('secure');
    expect(asked(all - 1)).toBe('too_few');
  });
});

describe('a counting run', () => {
  const runs = (said: number, step = 5) => {
    const marks = WEEK.flatMap((day) =>
      runEvidence({ start: 20, step, length: 10, said }).map((each) => ({
        ...each,
        day,
        way: 'run' as const,
      })),
    );
    return judge(
      marks,
      WEEK.map(() => score('counting.fives', said, 10)),
      { rung: FIVES },
    );
  };

  test('said to its end all week is secure', () => {
    expect(runs(10).level).toBe('secure');
  });

  test('that stops half way all week is not yet secure', () => {
    expect(runs(5).level).toBe('not_yet');
  });

  test('is expected to go as far as its steps carry it', () => {
    const marks = runEvidence({ start: 20, step: 5, length: 4, said: 3 }).map((each) => ({
      ...each,
      day: FRIDAY,
      way: 'run' as const,
    }));
    const states = [...rebuildMemory(marks).values()].filter(({ asked }) => asked > 0);
    const m =
      states.reduce((total, { state }) => total + MEMORY_MODEL.recall(state, 20_707), 0) / 3;
    // Of four numbers the start is said, the second with chance m, the third m^2, the fourth m^3. By hand: three of four
    // were said, and memory's share counts as eight answers.
    const share = (1 + m + m ** 2 + m ** 3) / 4;
    const { expected } = judge(marks, [score('counting.fives', 3, 4)], { rung: FIVES });
    expect(states).toHaveLength(3);
    expect(expected).toBeCloseTo((8 * share + 3) / 12, 9);
  });

  test('in other steps lends it no memory', () => {
    expect(runs(10, 2)).toEqual(
      judge(
        [],
        WEEK.map(() => score('counting.fives', 10, 10)),
        { rung: FIVES },
      ),
    );
  });
});

test('whatever was marked, chances stay between 0 and 1 and a level is given', () => {
  const anyMark = fc.record({
    fact: fc.constantFrom(...factsOf(HALVES, 11)),
    day: fc.integer({ min: -60, max: 3 }).map((ago) => addDays(FRIDAY, ago)),
    right: fc.boolean(),
    way: fc.constantFrom('card' as const, 'unmissed' as const),
  });
  const anyTally = fc
    .tuple(fc.nat(20), fc.nat(4))
    .map(([right, missed]): [number, number] => [right, right + missed])
    .filter(([, asked]) => asked > 0);
  fc.assert(
    fc.property(fc.array(anyMark, { maxLength: 60 }), anyTally, (marks, [right, asked]) => {
      const { level, expected, sure } = judge(marks, [score('halves.to20', right, asked)]);
      expect(['secure', 'in_between', 'not_yet', 'too_few']).toContain(level);
      for (const chance of [expected, sure]) {
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
      }
      if (level === 'secure') {
        expect(expected).toBeGreaterThan(0.9 - 1e-9);
        expect(sure).toBeGreaterThan(0.8);
      }
    }),
  );
});
