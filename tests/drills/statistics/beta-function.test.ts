import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logGamma, regularisedBeta } from '../../../drills/statistics/beta-function.ts';

const above0 = fc.double({ min: 0.05, max: 300, noNaN: true });
// In steps that have an exact complement, so that 1 - x loses nothing.
const chance = fc.nat(1024).map((share) => share / 1024);

describe('logGamma', () => {
  test('of five is the logarithm of 24', () => {
    expect(logGamma(5)).toBeCloseTo(Math.log(24), 12);
  });

  test('of a half is the logarithm of the root of pi', () => {
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 12);
  });

  test('one more in x is the logarithm of x more', () => {
    fc.assert(
      fc.property(above0, (x) => {
        expect(logGamma(x + 1) - logGamma(x)).toBeCloseTo(Math.log(x), 9);
      }),
    );
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('of %d is refused', (x) => {
    expect(() => logGamma(x)).toThrow(RangeError);
  });
});

describe('regularisedBeta', () => {
  test('of a power is the power', () => {
    expect(regularisedBeta(0.8, 4, 1)).toBeCloseTo(0.8 ** 4, 12);
    expect(regularisedBeta(0.3, 1, 1)).toBeCloseTo(0.3, 12);
  });

  test('it begins at nought and ends at one', () => {
    expect([0, 1].map((x) => regularisedBeta(x, 3, 7))).toEqual([0, 1]);
  });

  test('it stays within 0 and 1 and mirrors when both numbers change places', () => {
    fc.assert(
      fc.property(chance, above0, above0, (x, a, b) => {
        const value = regularisedBeta(x, a, b);
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1 + 1e-12);
        expect(value + regularisedBeta(1 - x, b, a)).toBeCloseTo(1, 9);
      }),
    );
  });

  test.each([
    [0.5, 0, 1],
    [0.5, 1, -2],
    [0.5, Number.NaN, 1],
    [1.5, 1, 1],
    [-0.5, 1, 1],
    [Number.NaN, 1, 1],
  ])('at %d of Beta(%d, %d) is refused', (x, a, b) => {
    expect(() => regularisedBeta(x, a, b)).toThrow(RangeError);
  });
});
