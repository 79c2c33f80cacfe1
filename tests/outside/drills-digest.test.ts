import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeSecurity } from '../../drills/digest/judge-security.ts';
import { mannKendall } from '../../drills/digest/mann-kendall.ts';
import { priorWeight, shrunkRate } from '../../drills/digest/prior-weight.ts';
import { proposeStep } from '../../drills/digest/propose-step.ts';
import { createRandom, MEMORY_MODEL, rungById } from '../../drills/index.ts';
import { regularisedBeta } from '../../drills/statistics/beta-function.ts';
import { betaPosterior } from '../../drills/statistics/beta-posterior.ts';
import { theilSen } from '../../drills/statistics/theil-sen.ts';
import { FRIDAY, score } from '../drills/support/week.ts';

describe('shrinkage of miss rates', () => {
  // Source: the beta-binomial is conjugate (textbook result; Gelman et al., Bayesian Data Analysis, chapter 2):
  // Beta(a, b) and k of n give the posterior mean (a + k) / (a + b + n).
  test('is the posterior mean of the beta-binomial with the prior Beta(weight x rate, weight x (1 - rate))', () => {
    const anyCase = fc.record({
      missed: fc.nat(30),
      more: fc.nat(30),
      alpha: fc.integer({ min: 1, max: 20 }),
      beta: fc.integer({ min: 1, max: 20 }),
    });
    fc.assert(
      fc.property(anyCase, ({ missed, more, alpha, beta }) => {
        const asked = missed + more;
        const prior = { common: alpha / (alpha + beta), weight: alpha + beta };
        const { mean } = betaPosterior(missed, asked, { alpha, beta });
        expect(shrunkRate({ missed, asked }, prior)).toBeCloseTo(mean, 12);
      }),
    );
  });

  test('is the posterior mean by numerical integration over the miss rate, without the closed form', () => {
    // Prior Beta(2, 6), 3 of 4 missed; likelihood x prior on a fine grid, Bayes' rule itself.
    let weighed = 0;
    let total = 0;
    for (let step = 1; step < 20_000; step += 1) {
      const p = step / 20_000;
      const density = p ** (2 - 1 + 3) * (1 - p) ** (6 - 1 + 1);
      weighed += p * density;
      total += density;
    }
    const shrunk = shrunkRate({ missed: 3, asked: 4 }, { common: 0.25, weight: 8 });
    expect(shrunk).toBeCloseTo(weighed / total, 6);
  });

  test('finds the weight that made the marks: rates drawn from a Beta of weight 10', () => {
    // Method of moments on marks with a known answer: each rate is drawn from Beta(2, 8) by inverting its distribution,
    // each mark by chance. Seed and counts are fixed, so that the figure never changes.
    const random = createRandom('a class with a known spread');
    const chance = () => random.int(1_000_000) / 1_000_000;
    const tallies = Array.from({ length: 400 }, () => {
      const rate = betaQuantile(chance(), 2, 8);
      const missed = Array.from({ length: 30 }, () => chance() < rate).filter(Boolean).length;
      return { missed, asked: 30 };
    });
    expect(priorWeight(tallies)).toBeGreaterThan(8);
    expect(priorWeight(tallies)).toBeLessThan(12.5);
  });
});

/** The value below which a share of Beta(alpha, beta) lies, by halving. */
function betaQuantile(share: number, alpha: number, beta: number): number {
  let [low, high] = [0, 1];
  for (let round = 0; round < 40; round += 1) {
    const middle = (low + high) / 2;
    if (regularisedBeta(middle, alpha, beta) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe('what is said of one child', () => {
  // Closed forms of the Beta distribution: P(p >= 0.8) is 1 - 0.8^n for Beta(n, 1).
  const judge = (right: number, asked: number) => {
    const rung = rungById('halves.to20');
    if (rung === null) throw new Error('the rung is there');
    const child = { memory: new Map(), parts: [score('halves.to20', right, asked)] };
    return judgeSecurity(rung, child, FRIDAY, MEMORY_MODEL);
  };

  test.each([
    [3, 3, 0.8, 0.5904],
    [10, 10, 0.916667, 0.914101],
    [8, 10, 0.75, 0.382598],
  ])('%d of %d without memory: mean %f, chance of 0.8 and more %f', (right, asked, mean, sure) => {
    const judged = judge(right, asked);
    expect(judged.expected).toBeCloseTo(mean, 6);
    expect(judged.sure).toBeCloseTo(sure, 6);
  });

  test('7 of 10 is not yet secure and 8 of 10 may be: 0.161 and 0.383 on either side of one in five', () => {
    // P(p >= 0.8) for Beta(8, 4) is the chance of four or more of eleven at 0.2 each (binomial tables: 0.1611).
    expect(judge(7, 10).sure).toBeCloseTo(0.1611, 4);
    expect(judge(7, 10).level).toBe('not_yet');
    expect(judge(8, 10).level).toBe('in_between');
  });

  test('eight right of eight are the fewest that are sure enough at 80 %, with ten of ten far from 95 %', () => {
    // 1 - 0.8^9 = 0.865782 for Beta(9, 1).
    expect(judge(8, 8).sure).toBeCloseTo(1 - 0.8 ** 9, 9);
    expect(judge(10, 10).sure).toBeLessThan(0.95);
  });
});

describe('what is said of the share of children secure', () => {
  // Wilson's interval at 80 % (z = 1.2816): 3 of 3, 5 of 5 and 10 of 10 begin at n / (n + z^2), computed by hand.
  test.each([
    [3, 0.646221],
    [5, 0.752743],
    [10, 0.858931],
  ])('%d of %d children secure stand for a share of at least %f', (count, lower) => {
    const judged = Array.from({ length: count }, (_, index) => ({
      childId: `child-${index}`,
      number: index + 1,
      nickname: 'Wren',
      level: 'secure' as const,
    }));
    const { share } = proposeStep(judged, count);
    expect(share.lower).toBeCloseTo(lower, 5);
    expect(share.upper).toBe(1);
  });
});

describe('the test for a trend', () => {
  test.each([
    [5, 1],
    [6, 6],
    [7, 76],
    [8, 628],
  ])(
    'finds %d values in chance order rising in as many orders as tables say: %d',
    (n, expected) => {
      // Orders with few enough inversions, by the Mahonian numbers (OEIS A008302): 1 of 5! = 120 (S = 10), 1 + 5 of 720
      // (S of 13 and more), 1 + 6 + 20 + 49 of 5040 (15), 1 + 7 + 27 + 76 + 174 + 343 of 40320 (18). The tabled
      // chances of these S are 0.0083, 0.0083, 0.015 and 0.016 (Kendall, Rank Correlation Methods; from memory).
      const rising = permutations(n).filter((order) => mannKendall(order).z > 1.959964);
      expect(rising).toHaveLength(expected);
    },
  );

  test('has the variance that counting all orders of scores with ties gives', () => {
    const scores = [7, 8, 8, 9, 9, 9, 10];
    const all = permutations(scores.length).map((order) =>
      mannKendall(order.map((at) => scores[at] ?? 0)),
    );
    const variance = all.reduce((total, { s }) => total + s * s, 0) / all.length;
    const some = all.find(({ s }) => s > 1);
    expect(variance).toBeCloseTo(((some?.s ?? 0) - 1) ** 2 / (some?.z ?? 1) ** 2, 6);
  });

  test('and the slope beside it are those of the published outlier example', () => {
    // x 1..8 with one outlier (data of a public Theil-Sen example, found there): slope 1.007143. One of 28 pairs each of
    // 20.0 with 6.1, 7.0 and 8.2 falls: S = 25 - 3, z = 21 / sqrt(8 x 7 x 21 / 18) = 2.598.
    const values = [1.1, 2.0, 3.1, 4.2, 20.0, 6.1, 7.0, 8.2];
    expect(theilSen(values.map((y, x) => ({ x, y })))?.slope).toBeCloseTo(1.007143, 6);
    expect(mannKendall(values)).toMatchObject({ s: 22, z: expect.closeTo(2.598, 3) });
  });
});

function permutations(n: number): number[][] {
  if (n === 0) return [[]];
  return permutations(n - 1).flatMap((order) =>
    Array.from({ length: n }, (_, at) => [...order.slice(0, at), n - 1, ...order.slice(at)]),
  );
}
