import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { theilSen } from '../../../drills/index.ts';

const scores = (...y: number[]) => y.map((value, x) => ({ x, y: value }));

describe('theilSen', () => {
  test('one bad day does not bend the trend', () => {
    expect(theilSen(scores(6, 7, 2, 9, 10))).toEqual({ slope: 1, intercept: 6 });
  });

  test('fewer than two points have no trend', () => {
    expect(theilSen([])).toBeNull();
    expect(theilSen(scores(6))).toBeNull();
  });

  test('points all at the same x have no trend, and such a pair counts for none', () => {
    const twice = { x: 3, y: 8 };
    expect(theilSen([twice, { x: 3, y: 2 }])).toBeNull();
    expect(
      theilSen([
        { x: 0, y: 2 },
        { x: 3, y: 5 },
        { x: 3, y: 5 },
      ])?.slope,
    ).toBe(1);
  });

  test('level scores have a slope of nought', () => {
    expect(theilSen(scores(7, 7, 7))).toEqual({ slope: 0, intercept: 7 });
  });

  test('the order of the points plays no part', () => {
    const anyPoints = fc.array(fc.record({ x: fc.nat(30), y: fc.nat(20) }), { maxLength: 20 });
    fc.assert(
      fc.property(anyPoints, (points) => {
        expect(theilSen(points.toReversed())?.slope ?? 99).toBeCloseTo(
          theilSen(points)?.slope ?? 99,
          12,
        );
      }),
    );
  });

  test('a number that is none is refused', () => {
    expect(() => theilSen([{ x: 0, y: Number.NaN }])).toThrow(
      new RangeError('(0, NaN) is no point'),
    );
    expect(() => theilSen([{ x: Number.POSITIVE_INFINITY, y: 1 }])).toThrow(RangeError);
  });
});
