import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareWithBest, scoreFromMissed } from '../../../drills/index.ts';

describe('compareWithBest', () => {
  test('a first score has nothing to be compared with', () => {
    expect(compareWithBest(0, 10, [])).toEqual({ kind: 'first' });
  });

  test('a better score says by how much', () => {
    expect(compareWithBest(9, 10, [6, 7])).toEqual({ kind: 'better', by: 2, best: 7 });
  });

  test('the best is the highest earlier score, not the latest', () => {
    expect(compareWithBest(7, 10, [9, 4, 6])).toEqual({ kind: 'below', best: 9 });
  });

  test('a score as high as the best is the same', () => {
    expect(compareWithBest(9, 10, [9, 4])).toEqual({ kind: 'same', best: 9 });
    expect(compareWithBest(0, 10, [0])).toEqual({ kind: 'same', best: 0 });
  });

  test.each([
    [11, 10, []],
    [-1, 10, []],
    [2.5, 10, []],
    [5, 10, [12]],
  ])('%d of %d beside %j is refused', (right, asked, earlier) => {
    expect(() => compareWithBest(right, asked, earlier)).toThrow(RangeError);
  });

  test('the order of earlier scores makes no difference', () => {
    const score = fc.integer({ min: 0, max: 20 });
    fc.assert(
      fc.property(score, fc.array(score), (right, earlier) => {
        const sorted = [...earlier].sort((a, b) => a - b);
        expect(compareWithBest(right, 20, earlier)).toEqual(compareWithBest(right, 20, sorted));
      }),
    );
  });
});

describe('scoreFromMissed', () => {
  test('two missed of ten leave eight', () => {
    expect(scoreFromMissed(10, [2, 7])).toBe(8);
    expect(scoreFromMissed(10, [])).toBe(10);
    expect(scoreFromMissed(3, [2, 0, 1])).toBe(0);
  });

  test.each([[[2, 2]], [[10]], [[-1]], [[0.5]]])('missed cards %j of ten are refused', (missed) => {
    expect(() => scoreFromMissed(10, missed)).toThrow(RangeError);
  });
});
