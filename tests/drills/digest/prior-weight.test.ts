import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { priorWeight, shrunkRate } from '../../../drills/digest/prior-weight.ts';

const anyTallies = fc.array(
  fc
    .tuple(fc.nat(30), fc.nat(30))
    .map(([one, other]) => ({ missed: Math.min(one, other), asked: Math.max(one, other) })),
  { maxLength: 40 },
);

describe('the weight of the common rate', () => {
  test('is the least where one thing is always missed and another never, as its docstring says', () => {
    expect(
      priorWeight([
        { missed: 0, asked: 10 },
        { missed: 10, asked: 10 },
      ]),
    ).toBe(4);
  });

  test('is the most where all rates are the same', () => {
    expect(priorWeight(Array.from({ length: 5 }, () => ({ missed: 2, asked: 10 })))).toBe(40);
  });

  test('is 8 where marks cannot tell: one thing, nothing, or each asked once', () => {
    expect(priorWeight([])).toBe(8);
    expect(priorWeight([{ missed: 3, asked: 9 }])).toBe(8);
    expect(
      priorWeight([
        { missed: 1, asked: 1 },
        { missed: 0, asked: 1 },
      ]),
    ).toBe(8);
  });

  test('is what the formula gives by hand', () => {
    // Rates 0.1, 0.3, 0.5 of 10 each: common 0.3; between 10 (0.04 + 0 + 0.04) / 2 = 0.4;
    // within 10 (0.09 + 0.21 + 0.25) / 27 = 0.203704; n0 = (30 - 300 / 30) / 2 = 10.
    // rho = 0.196296 / (0.4 + 9 x 0.203704) = 0.087894, 1 / rho - 1 = 10.377.
    const tallies = [1, 3, 5].map((missed) => ({ missed, asked: 10 }));
    expect(priorWeight(tallies)).toBeCloseTo(10.377, 3);
  });

  test('leaves out what was never asked', () => {
    const tallies = [1, 3, 5].map((missed) => ({ missed, asked: 10 }));
    expect(priorWeight([...tallies, { missed: 0, asked: 0 }])).toBe(priorWeight(tallies));
  });

  test('stays within 4 and 40 marks whatever was marked, in any order', () => {
    fc.assert(
      fc.property(anyTallies, (tallies) => {
        const weight = priorWeight(tallies);
        expect(weight).toBeGreaterThanOrEqual(4);
        expect(weight).toBeLessThanOrEqual(40);
        expect(priorWeight(tallies.toReversed())).toBeCloseTo(weight, 6);
      }),
    );
  });
});

describe('a shrunk rate', () => {
  test('is as its docstring says', () => {
    expect(shrunkRate({ missed: 2, asked: 2 }, { common: 0.1, weight: 8 })).toBeCloseTo(0.28, 12);
  });

  test('of nothing asked is the common rate', () => {
    expect(shrunkRate({ missed: 0, asked: 0 }, { common: 0.3, weight: 5 })).toBeCloseTo(0.3, 12);
  });

  test('lies between the own rate and the common one', () => {
    const anyTally = fc
      .tuple(fc.nat(30), fc.integer({ min: 1, max: 30 }))
      .map(([missed, asked]) => ({ missed: Math.min(missed, asked), asked }));
    const anyPrior = fc.record({
      common: fc.double({ min: 0, max: 1, noNaN: true }),
      weight: fc.integer({ min: 1, max: 40 }),
    });
    fc.assert(
      fc.property(anyTally, anyPrior, (tally, prior) => {
        const own = tally.missed / tally.asked;
        const shrunk = shrunkRate(tally, prior);
        expect(shrunk).toBeGreaterThanOrEqual(Math.min(own, prior.common) - 1e-12);
        expect(shrunk).toBeLessThanOrEqual(Math.max(own, prior.common) + 1e-12);
      }),
    );
  });
});
