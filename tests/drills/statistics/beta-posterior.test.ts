import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { betaPosterior } from '../../../drills/index.ts';

const anyCount = fc.nat(200).chain((n) => fc.record({ n: fc.constant(n), k: fc.nat(n) }));

describe('betaPosterior', () => {
  test('eight of ten are above four fifths with a chance of 38 in 100', () => {
    expect(betaPosterior(8, 10).chanceAbove(0.8)).toBeCloseTo(0.382598, 6);
  });

  test('of nothing asked every chance is as likely as every other', () => {
    const belief = betaPosterior(0, 0);
    expect(belief.mean).toBe(0.5);
    expect(belief.chanceAbove(0.8)).toBeCloseTo(0.2, 12);
    const { lower, upper } = belief.interval(0.9);
    expect(lower).toBeCloseTo(0.05, 12);
    expect(upper).toBeCloseTo(0.95, 12);
  });

  test('every chance is above nought and none above one', () => {
    fc.assert(
      fc.property(anyCount, ({ k, n }) => {
        expect(betaPosterior(k, n).chanceAbove(0)).toBe(1);
        expect(betaPosterior(k, n).chanceAbove(1)).toBe(0);
      }),
    );
  });

  test('the interval holds its level, half of the rest on either side', () => {
    fc.assert(
      fc.property(
        anyCount,
        fc.double({ min: 0.05, max: 0.999, noNaN: true }),
        ({ k, n }, level) => {
          const belief = betaPosterior(k, n);
          const { lower, upper } = belief.interval(level);
          expect(1 - belief.chanceAbove(lower)).toBeCloseTo((1 - level) / 2, 9);
          expect(belief.chanceAbove(upper)).toBeCloseTo((1 - level) / 2, 9);
        },
      ),
    );
  });

  test('unless said the interval holds 95 %', () => {
    const belief = betaPosterior(8, 10);
    expect(belief.interval()).toEqual(belief.interval(0.95));
  });

  test('the chance sinks as the bar rises, and rises with each right answer', () => {
    fc.assert(
      fc.property(anyCount, fc.double({ min: 0.01, max: 0.98, noNaN: true }), ({ k, n }, p) => {
        const belief = betaPosterior(k, n);
        expect(belief.chanceAbove(p + 0.01)).toBeLessThanOrEqual(belief.chanceAbove(p));
        const better = betaPosterior(k + 1, n + 1).chanceAbove(p);
        expect(better).toBeGreaterThanOrEqual(belief.chanceAbove(p) - 1e-12);
      }),
    );
  });

  test('a prior counts like answers seen before', () => {
    expect(betaPosterior(3, 4, { alpha: 6, beta: 2 })).toMatchObject({ alpha: 9, beta: 3 });
    expect(betaPosterior(3, 4, { alpha: 6, beta: 2 }).chanceAbove(0.8)).toBe(
      betaPosterior(8, 10).chanceAbove(0.8),
    );
  });

  test('more right than asked, a prior of nought, a chance beyond one and a level of one are refused', () => {
    expect(() => betaPosterior(11, 10)).toThrow('11 right of 10: a whole number from 0 to 10');
    expect(() => betaPosterior(1, 2, { alpha: 0, beta: 1 })).toThrow(RangeError);
    expect(() => betaPosterior(1, 2, { alpha: 1, beta: Number.NaN })).toThrow(RangeError);
    expect(() => betaPosterior(1, 2).chanceAbove(1.1)).toThrow('1.1 is no chance: 0 to 1');
    expect(() => betaPosterior(1, 2).chanceAbove(-0.1)).toThrow('-0.1 is no chance: 0 to 1');
    expect(() => betaPosterior(1, 2).interval(1)).toThrow('level 1: it lies between 0 and 1');
  });
});
