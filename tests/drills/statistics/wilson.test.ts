import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wilson } from '../../../drills/index.ts';

const Z = 1.959964;
const anyCount = fc
  .integer({ min: 1, max: 500 })
  .chain((n) => fc.record({ n: fc.constant(n), k: fc.nat(n) }));

describe('wilson', () => {
  test('eight of ten', () => {
    const { lower, upper } = wilson(8, 10, Z);
    expect([lower, upper].map((end) => end.toFixed(6))).toEqual(['0.490162', '0.943318']);
  });

  test('of nothing asked everything is plausible', () => {
    expect(wilson(0, 0, Z)).toEqual({ lower: 0, upper: 1 });
  });

  test('none right begins at nought exactly, all right ends at one exactly', () => {
    fc.assert(
      fc.property(anyCount, ({ n }) => {
        expect(wilson(0, n, Z).lower).toBe(0);
        expect(wilson(n, n, Z).upper).toBe(1);
      }),
    );
  });

  test('it lies within 0 and 1, holds what was seen, and mirrors with right and wrong', () => {
    fc.assert(
      fc.property(anyCount, fc.double({ min: 0.1, max: 4, noNaN: true }), ({ k, n }, z) => {
        const { lower, upper } = wilson(k, n, z);
        expect(lower).toBeGreaterThanOrEqual(0);
        expect(upper).toBeLessThanOrEqual(1);
        expect(lower).toBeLessThanOrEqual(k / n);
        expect(upper).toBeGreaterThanOrEqual(k / n);
        expect(wilson(n - k, n, z).lower).toBeCloseTo(1 - upper, 12);
      }),
    );
  });

  test('more answers and a lower level make it narrower', () => {
    const width = (k: number, n: number, z: number) => {
      const { lower, upper } = wilson(k, n, z);
      return upper - lower;
    };
    expect(width(80, 100, Z)).toBeLessThan(width(8, 10, Z));
    expect(width(8, 10, 1.2816)).toBeLessThan(width(8, 10, Z));
  });

  test.each([
    [11, 10],
    [-1, 10],
    [2.5, 10],
    [Number.NaN, 10],
    [1, 0],
  ])('%d right of %d is refused with the range', (k, n) => {
    expect(() => wilson(k, n, Z)).toThrow(
      new RangeError(`${k} right of ${n}: a whole number from 0 to ${n}`),
    );
  });

  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('%d asked is refused', (n) => {
    expect(() => wilson(0, n, Z)).toThrow(RangeError);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('a z of %d is refused', (z) => {
    expect(() => wilson(1, 2, z)).toThrow(new RangeError(`z is ${z}: it must be above 0`));
  });
});
