import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newcombe } from '../../../drills/index.ts';

const Z = 1.959964;
const anyCount = fc
  .integer({ min: 1, max: 300 })
  .chain((asked) => fc.record({ asked: fc.constant(asked), right: fc.nat(asked) }));

describe('newcombe', () => {
  test('56 of 70 beside 48 of 80, as its docstring says', () => {
    const { lower, upper } = newcombe({ right: 56, asked: 70 }, { right: 48, asked: 80 }, Z);
    expect([lower, upper].map((end) => end.toFixed(6))).toEqual(['0.052431', '0.333873']);
  });

  test('holds the difference that was seen, stays within -1 and 1, and turns round with the two counts', () => {
    fc.assert(
      fc.property(anyCount, anyCount, (now, before) => {
        const { lower, upper } = newcombe(now, before, Z);
        const seen = now.right / now.asked - before.right / before.asked;
        expect(lower).toBeLessThanOrEqual(seen + 1e-12);
        expect(upper).toBeGreaterThanOrEqual(seen - 1e-12);
        expect(lower).toBeGreaterThanOrEqual(-1);
        expect(upper).toBeLessThanOrEqual(1);
        expect(newcombe(before, now, Z).upper).toBeCloseTo(-lower, 12);
      }),
    );
  });

  test('the same count twice never says that anything changed', () => {
    fc.assert(
      fc.property(anyCount, (count) => {
        const { lower, upper } = newcombe(count, count, Z);
        expect(lower).toBeLessThanOrEqual(0);
        expect(upper).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('of nothing asked on either side everything is plausible', () => {
    const none = { right: 0, asked: 0 };
    expect(newcombe(none, { right: 3, asked: 4 }, Z)).toEqual({ lower: -1, upper: 1 });
    expect(newcombe({ right: 3, asked: 4 }, none, Z)).toEqual({ lower: -1, upper: 1 });
  });

  test('more right than asked is refused', () => {
    expect(() => newcombe({ right: 2, asked: 1 }, { right: 0, asked: 1 }, Z)).toThrow(RangeError);
  });
});
