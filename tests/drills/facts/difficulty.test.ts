import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockDifficulty } from '../../../drills/facts/clock-difficulty.ts';
import { easierOf, harder } from '../../../drills/facts/difficulty-scale.ts';
import {
  productDifficulty,
  stepDifficulty,
  wordDifficulty,
} from '../../../drills/facts/other-difficulty.ts';
import { sumDifficulty } from '../../../drills/facts/sum-difficulty.ts';
import {
  add,
  clock,
  difficultyOf,
  double,
  type FactId,
  from,
  gap,
  half,
  lead,
  less,
  next,
  RUNGS,
  rungById,
  rungTable,
  sub,
  times,
} from '../../../drills/index.ts';

const LEVELS: readonly [FactId, number][] = [
  ['add:7+0', 0],
  ['add:0+19', 0],
  ['add:1+8', 1],
  ['add:5+5', 1],
  ['add:3+4', 2],
  ['add:4+6', 2],
  ['add:6+6', 3],
  ['add:9+9', 3],
  ['add:10+7', 3],
  ['add:12+5', 3],
  ['add:9+4', 4],
  ['add:13+7', 4],
  ['add:7+8', 5],
  ['add:8+6', 5],
  ['sub:7-0', 0],
  ['sub:8-1', 1],
  ['sub:7-7', 1],
  ['sub:10-5', 2],
  ['sub:9-4', 3],
  ['sub:17-7', 4],
  ['sub:15-8', 5],
  ['gap:7+10', 3],
  ['lead:7+10', 3],
  ['less:10-7', 4],
  ['from:3-7', 4],
  ['from:8-7', 5],
  ['double:5', 1],
  ['double:7', 3],
  ['half:10', 2],
  ['half:14', 4],
  ['half:30', 5],
  ['clock:0300', 1],
  ['clock:0330', 2],
  ['clock:0345', 3],
  ['clock:0310', 4],
  ['clock:0350', 5],
  ['clock:0317', 5],
  ['word:7', 1],
  ['word:13', 2],
  ['word:70', 2],
  ['word:47', 3],
  ['word:147', 4],
  ['word:201', 5],
  ['next:8+1', 0],
  ['next:8-1', 1],
  ['next:30+10', 1],
  ['next:33+10', 2],
  ['next:93+10', 3],
  ['next:103-10', 4],
  ['next:95+5', 2],
  ['next:12+3', 3],
  ['times:0x5', 0],
  ['times:1x5', 1],
  ['times:7x10', 2],
  ['times:7x5', 3],
  ['times:7x4', 4],
  ['times:7x8', 5],
];

describe('difficultyOf', () => {
  test.each(LEVELS)('%s stands at %d', (fact, difficulty) => {
    expect(difficultyOf(fact)).toBe(difficulty);
  });

  test('the examples of its parts hold', () => {
    expect(sumDifficulty(9, 4)).toBe(4);
    expect(clockDifficulty(25)).toBe(4);
    expect(wordDifficulty(70)).toBe(2);
    expect(stepDifficulty(98, 5)).toBe(4);
    expect(productDifficulty(3, 5)).toBe(3);
    expect(harder(4, 2)).toBe(5);
    expect(easierOf(4, 2)).toBe(2);
  });

  test('a text that is no fact is refused', () => {
    expect(() => difficultyOf('sub:4-9')).toThrow('not a fact: sub:4-9');
  });
});

describe('what is harder than what', () => {
  const digit = fc.integer({ min: 0, max: 20 });
  const holds = (check: (a: number, b: number) => boolean) =>
    fc.assert(fc.property(digit, digit, check), { numRuns: 500 });

  test('the order of two numbers makes no difference to a sum or a product', () => {
    holds((a, b) => difficultyOf(add(a, b)) === difficultyOf(add(b, a)));
    holds((a, b) => difficultyOf(times(a, b)) === difficultyOf(times(b, a)));
  });

  test('taking away is never easier than its addition, unless it takes away a nought or a one', () => {
    holds((a, b) => b < 2 || difficultyOf(sub(a + b, b)) >= difficultyOf(add(a, b)));
  });

  test('a missing number is never easier than the plain card', () => {
    holds((a, b) => difficultyOf(gap(a, a + b)) >= difficultyOf(add(a, b)));
    holds((a, b) => difficultyOf(lead(a, a + b)) === difficultyOf(gap(a, a + b)));
    holds((a, b) => difficultyOf(less(a + b, a)) >= difficultyOf(sub(a + b, a)));
    holds((a, b) => difficultyOf(from(a, b)) >= difficultyOf(add(b, a)));
  });

  test('a double is its tie, and a half is never easier than its double', () => {
    holds((a) => difficultyOf(double(a)) === difficultyOf(add(a, a)));
    holds((a) => difficultyOf(half(2 * a)) >= difficultyOf(double(a)));
  });

  test('counting back is never easier than counting on over the same numbers', () => {
    holds((a, b) => difficultyOf(next(a + b + 1, -b - 1)) >= difficultyOf(next(a, b + 1)));
  });

  test('the hour makes no difference to a clock', () => {
    for (const minute of [0, 5, 15, 30, 50]) {
      const all = Array.from({ length: 12 }, (_, at) => difficultyOf(clock(at + 1, minute)));
      expect(new Set(all).size).toBe(1);
    }
  });

  test('every fact of every rung stands between 0 and 5, and every level is used', () => {
    const levels = RUNGS.flatMap((rung) =>
      rung.kind === 'facts' ? rung.facts.map((fact) => difficultyOf(fact)) : [],
    );
    expect([...new Set(levels)].toSorted()).toEqual([0, 1, 2, 3, 4, 5]);
  });

  test.each([
    ['bonds.within5', 'bonds.to10', 'bonds.ties', 'bonds.bridging'],
    ['takeaway.within5', 'takeaway.to10', 'takeaway.teens', 'takeaway.bridging'],
    ['doubles.to5', 'doubles.to10', 'doubles.to20'],
    ['halves.to10', 'halves.to20', 'halves.to40', 'halves.tens'],
    ['clock.oclock', 'clock.half', 'clock.quarterpast', 'clock.fivepast', 'clock.fiveto'],
    ['words.to20', 'words.tens', 'words.to100', 'words.to200'],
  ])('the mean rises from %s on up its ladder', (...ids) => {
    const means = ids.map(meanOf);
    for (const [at, mean] of means.entries()) expect(mean).toBeGreaterThan(means[at - 1] ?? -1);
  });
});

function meanOf(id: string): number {
  const rung = rungById(id);
  if (rung?.kind !== 'facts') throw new Error(`${id} has no facts`);
  const table = rungTable(rung);
  return table.reduce((total, { difficulty }) => total + difficulty, 0) / table.length;
}
