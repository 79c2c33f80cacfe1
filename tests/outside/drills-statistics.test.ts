import fc from 'fast-check';
import {
  binomialDistribution,
  gammaln,
  linearRegression,
  median,
  probit,
  quantile,
} from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { betaPosterior, theilSen, wilson } from '../../drills/index.ts';
import { logGamma, regularisedBeta } from '../../drills/statistics/beta-function.ts';

const Z95 = 1.959964;
const Z80 = 1.281552;

describe('the Wilson interval', () => {
  // Source of the formula: Wilson 1927; the values were worked out from it apart from our code.
  test.each([
    [81, 263, 0.255289, 0.36621],
    [15, 148, 0.062386, 0.160487],
    [0, 20, 0, 0.161125],
    [1, 29, 0.006113, 0.171755],
    [3, 3, 0.438503, 1],
    [8, 10, 0.490162, 0.943318],
    [9, 10, 0.59585, 0.982124],
    [10, 10, 0.722467, 1],
    [19, 20, 0.763869, 0.991119],
    [20, 20, 0.838875, 1],
  ])('of %d right in %d is %d to %d', (k, n, lower, upper) => {
    const interval = wilson(k, n, Z95);
    expect(interval.lower).toBeCloseTo(lower, 6);
    expect(interval.upper).toBeCloseTo(upper, 6);
  });

  // Source: Newcombe, Statistics in Medicine 17 (1998), 857-872, Table I, method 3; from memory, to four places.
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('of %d right in %d is the printed %d to %d', (k, n, lower, upper) => {
    const interval = wilson(k, n, Z95);
    expect(interval.lower).toBeCloseTo(lower, 4);
    expect(interval.upper).toBeCloseTo(upper, 4);
  });

  test.each([
    [3, 0.646221],
    [5, 0.752743],
    [10, 0.858931],
  ])('of %d all right begins at %d when it holds 80 %', (n, lower) => {
    expect(wilson(n, n, Z80).lower).toBeCloseTo(lower, 6);
  });

  test.each([
    [0.7, 9],
    [0.8, 16],
    [0.9, 35],
  ])('needs all right to begin at %d or above: %d answers', (bound, n) => {
    expect(wilson(n, n, Z95).lower).toBeGreaterThanOrEqual(bound);
    expect(wilson(n - 1, n - 1, Z95).lower).toBeLessThan(bound);
  });

  // The interval's own meaning: its ends are the chances that lie exactly z standard errors from what was seen.
  test('ends where the score test of the library’s normal quantile turns', () => {
    for (const level of [0.8, 0.9, 0.95]) {
      const z = probit(0.5 + level / 2);
      const { lower, upper } = wilson(14, 20, z);
      for (const p of [lower, upper]) {
        expect(Math.abs(0.7 - p) / Math.sqrt((p * (1 - p)) / 20)).toBeCloseTo(z, 9);
      }
    }
  });
});

describe('the belief after answers', () => {
  // Source: Beta is its own conjugate prior (textbook result); P(p >= 0.8) of Beta(n, 1) is 1 - 0.8^n exactly.
  test('eight of ten', () => {
    const belief = betaPosterior(8, 10);
    expect(belief).toMatchObject({ alpha: 9, beta: 3, mean: 0.75 });
    const { lower, upper } = belief.interval(0.95);
    expect(lower).toBeCloseTo(0.4822, 4);
    expect(upper).toBeCloseTo(0.9398, 4);
    expect(belief.chanceAbove(0.8)).toBeCloseTo(0.382598, 6);
  });

  test('three of three', () => {
    const belief = betaPosterior(3, 3);
    expect(belief).toMatchObject({ alpha: 4, beta: 1, mean: 0.8 });
    expect(belief.chanceAbove(0.8)).toBeCloseTo(1 - 0.8 ** 4, 12);
    expect(belief.chanceAbove(0.8)).toBeCloseTo(0.5904, 4);
  });

  test('ten of ten', () => {
    const belief = betaPosterior(10, 10);
    expect(belief).toMatchObject({ alpha: 11, beta: 1 });
    expect(belief.mean).toBeCloseTo(0.916667, 6);
    expect(belief.chanceAbove(0.8)).toBeCloseTo(0.914101, 6);
    expect(belief.chanceAbove(0.9)).toBeCloseTo(0.686189, 6);
  });

  // Source: DLMF 8.17.5, the tail of a binomial distribution is a regularised incomplete beta; the binomial one is the
  // library's, which leaves out what is below its own epsilon of 0.0001.
  test('the incomplete beta is the library’s binomial tail', () => {
    for (const [n, p] of [
      [10, 0.8],
      [20, 0.35],
      [7, 0.5],
    ] as const) {
      const weights = binomialDistribution(n, p) ?? [];
      for (let k = 1; k <= n; k += 1) {
        const tail = weights.slice(k).reduce((sum, weight) => sum + weight, 0);
        expect(Math.abs(regularisedBeta(p, k, n - k + 1) - tail)).toBeLessThan(2e-4);
      }
    }
  });

  test('the incomplete beta of whole numbers is the exact binomial sum', () => {
    const anyCase = fc
      .integer({ min: 1, max: 40 })
      .chain((n) => fc.tuple(fc.constant(n), fc.integer({ min: 1, max: n })));
    fc.assert(
      fc.property(anyCase, fc.double({ min: 0, max: 1, noNaN: true }), ([n, k], p) => {
        expect(regularisedBeta(p, k, n - k + 1)).toBeCloseTo(binomialTail(n, k, p), 11);
      }),
    );
  });

  test('the logarithm of the gamma function is the library’s', () => {
    for (const x of [0.1, 0.5, 1, 1.5, 2, 2.4, 7, 33.3, 171, 500]) {
      expect(Math.abs(logGamma(x) - gammaln(x))).toBeLessThan(1e-11 * Math.max(1, gammaln(x)));
    }
  });
});

describe('the trend by pairs', () => {
  // Sources of the data: the first from a public calculator's page on this estimator (instantools), the second from a public
  // tutorial (codingace); slopes and intercepts by the definition, apart from our code. The others are ours.
  test.each([
    { what: 'six points', from: 1, y: [2, 3, 5, 4, 6, 8], slope: 1, intercept: 1 },
    {
      what: 'an outlier',
      from: 1,
      y: [1.1, 2.0, 3.1, 4.2, 20.0, 6.1, 7.0, 8.2],
      slope: 1.007143,
      intercept: 0.085714,
    },
    { what: 'a week of scores', from: 0, y: [6, 7, 7, 9, 10], slope: 1, intercept: 6 },
    { what: 'one bad day', from: 0, y: [6, 7, 2, 9, 10], slope: 1, intercept: 6 },
  ])('of $what', ({ from, y, slope, intercept }) => {
    const line = theilSen(y.map((value, index) => ({ x: from + index, y: value })));
    expect(line?.slope).toBeCloseTo(slope, 6);
    expect(line?.intercept).toBeCloseTo(intercept, 6);
  });

  const anyPoints = fc.uniqueArray(
    fc.record({ x: fc.integer({ min: 0, max: 60 }), y: fc.integer({ min: 0, max: 20 }) }),
    { minLength: 2, maxLength: 25, selector: ({ x }) => x },
  );

  test('is the library’s median of all slopes, and its median again', () => {
    fc.assert(
      fc.property(anyPoints, (points) => {
        const slopes = points.flatMap((one) =>
          points.filter(({ x }) => x > one.x).map(({ x, y }) => (y - one.y) / (x - one.x)),
        );
        const line = theilSen(points);
        expect(line?.slope).toBeCloseTo(median(slopes), 12);
        expect(line?.slope).toBeCloseTo(quantile(slopes, 0.5), 12);
        const rests = points.map(({ x, y }) => y - median(slopes) * x);
        expect(line?.intercept).toBeCloseTo(median(rests), 12);
      }),
    );
  });

  test('is the library’s line of least squares where the points lie on one', () => {
    const points = Array.from({ length: 9 }, (_, x) => ({ x, y: 3 - 0.25 * x }));
    const { m, b } = linearRegression(points.map(({ x, y }) => [x, y]));
    expect(theilSen(points)?.slope).toBeCloseTo(m, 12);
    expect(theilSen(points)?.intercept).toBeCloseTo(b, 12);
  });
});

/** The chance of at least k successes in n, summed term by term. */
function binomialTail(n: number, k: number, p: number): number {
  let sum = 0;
  for (let i = k; i <= n; i += 1) {
    let ways = 1;
    for (let j = 1; j <= i; j += 1) ways *= (n - i + j) / j;
    sum += ways * p ** i * (1 - p) ** (n - i);
  }
  return sum;
}
