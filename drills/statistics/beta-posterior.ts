import { checkChance, regularisedBeta } from './beta-function.ts';
import { checkCount, type Interval } from './wilson.ts';

/** What is believed of a chance, as a Beta distribution: as if `alpha` right and `beta` wrong answers had been seen. */
export interface BetaPosterior {
  readonly alpha: number;
  readonly beta: number;
  readonly mean: number;
  /** The middle part of the belief that holds `level` of it, as much being left out on either side; 0.95 unless said. */
  interval(level?: number): Interval;
  /** How sure it is that the chance is above `p`. */
  chanceAbove(p: number): number;
}

/** Every chance is as likely as every other before the first answer (the prior of Bayes and Laplace). */
const UNIFORM = { alpha: 1, beta: 1 };

/**
 * The belief about a chance after `k` of `n` answers were right: the Beta distribution is its own conjugate prior, so that
 * Beta(alpha, beta) becomes Beta(alpha + k, beta + n - k) (textbook result; Gelman et al., Bayesian Data Analysis, chapter 2).
 * Throws RangeError unless `k` and `n` are whole with 0 <= k <= n, both numbers of the prior are above 0, `level` lies
 * between 0 and 1 and `p` is 0 to 1.
 *
 * @example
 * betaPosterior(8, 10).chanceAbove(0.8); // 0.382598
 */
export function betaPosterior(
  k: number,
  n: number,
  prior: { readonly alpha: number; readonly beta: number } = UNIFORM,
): BetaPosterior {
  checkCount(k, n);
  if (!(prior.alpha > 0 && prior.beta > 0)) {
    throw new RangeError(`prior Beta(${prior.alpha}, ${prior.beta}): both must be above 0`);
  }
  const alpha = prior.alpha + k;
  const beta = prior.beta + n - k;
  return {
    alpha,
    beta,
    mean: alpha / (alpha + beta),
    interval: (level = 0.95) => middle(level, alpha, beta),
    chanceAbove(p) {
      checkChance(p);
      // The mirrored function keeps its digits where 1 - I_p would lose them.
      return regularisedBeta(1 - p, beta, alpha);
    },
  };
}

function middle(level: number, alpha: number, beta: number): Interval {
  if (!(level > 0 && level < 1)) throw new RangeError(`level ${level}: it lies between 0 and 1`);
  const tail = (1 - level) / 2;
  return { lower: quantile(tail, alpha, beta), upper: quantile(1 - tail, alpha, beta) };
}

/** Halved often enough to leave no digit that a number can hold. */
const HALVINGS = 60;

function quantile(share: number, alpha: number, beta: number): number {
  let low = 0;
  let high = 1;
  for (let round = 0; round < HALVINGS; round += 1) {
    const half = (low + high) / 2;
    if (regularisedBeta(half, alpha, beta) < share) low = half;
    else high = half;
  }
  return (low + high) / 2;
}
