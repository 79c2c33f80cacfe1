import fc from 'fast-check';
import { binomialDistribution, gammaln, mean, sampleVariance } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { chanceDone, ENOUGH_EVENINGS, paceOf } from '../../drills/index.ts';

/** A chance that a binomial count is at most `most`, by the library. */
function atMost(most: number, trials: number, chance: number): number {
  return (binomialDistribution(trials, chance) ?? [])
    .slice(0, most + 1)
    .reduce((sum, each) => sum + each, 0);
}

describe('the chance to be done with a book', () => {
  // Worked by hand: of a Poisson rate known from one page on one evening, the pages of one more day are geometric with a half.
  it.each([
    [1, 0.5],
    [2, 0.25],
    [3, 0.125],
  ])('of %d pages in a day after one page on one evening is %d', (left, chance) => {
    expect(chanceDone({ pages: 1, evenings: 1, spread: 1 }, left, 1)).toBeCloseTo(chance, 12);
  });

  // Source: a negative binomial count is at least L exactly when L + r - 1 trials hold at most r - 1 successes (textbook
  // identity); the binomial is simple-statistics'.
  it('is the tail of the library’s binomial', () => {
    for (const [pages, evenings, left, days] of [
      [10, 6, 8, 4],
      [24, 20, 30, 22],
      [3, 5, 1, 2],
      [40, 20, 12, 5],
    ] as const) {
      const again = evenings / (evenings + days);
      const expected = atMost(pages - 1, left + pages - 1, again);
      expect(chanceDone({ pages, evenings, spread: 1 }, left, days)).toBeCloseTo(expected, 9);
    }
  });

  // Source: the negative binomial mass function with the library's log gamma, summed.
  it('is one minus the summed mass below, for any pace', () => {
    const counts = { min: 1, max: 40 };
    fc.assert(
      fc.property(
        fc.integer(counts),
        fc.integer({ min: ENOUGH_EVENINGS, max: 28 }),
        fc.integer(counts),
        fc.integer(counts),
        (pages, evenings, left, days) => {
          const q = days / (days + evenings);
          const below = Array.from({ length: left }, (_, n) =>
            Math.exp(
              gammaln(n + pages) -
                gammaln(n + 1) -
                gammaln(pages) +
                n * Math.log(q) +
                pages * Math.log1p(-q),
            ),
          ).reduce((sum, each) => sum + each, 0);
          const chance = chanceDone({ pages, evenings, spread: 1 }, left, days);
          expect(chance).toBeCloseTo(1 - below, 8);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the spread of a child’s days', () => {
  // Source: the index of dispersion is variance over mean; both are simple-statistics'. Ours is drawn towards 1 as by four days.
  it('comes between 1 and the library’s variance over mean', () => {
    for (const days of [
      [2, 2, 2, 2, 2, 3],
      [0, 4, 0, 4, 1, 3, 0, 5],
      [1, 2, 3, 2, 1, 0, 2, 2],
    ]) {
      const index = sampleVariance(days) / mean(days);
      const weight = days.length - 1;
      const expected = (4 + weight * index) / (4 + weight);
      expect(paceOf(days)?.spread).toBeCloseTo(expected, 12);
      expect(expected).toBeGreaterThanOrEqual(Math.min(1, index));
      expect(expected).toBeLessThanOrEqual(Math.max(1, index));
    }
  });
});
