/** How often one thing was missed, and how often it was asked; not whole numbers where marks are weighed. */
export interface MissTally {
  readonly missed: number;
  readonly asked: number;
}

/** Bounds of the weight, in marks, and what is used where marks cannot tell. Our choice, no source. */
const LEAST = 4;
const MOST = 40;
const UNTOLD = 8;

/**
 * How strongly single miss rates are drawn to the common one: the weight, in marks, of a Beta prior at the common rate,
 * estimated from the marks themselves (empirical Bayes by the method of moments). The more the rates differ beyond what chance
 * does to so few marks, the smaller the weight.
 *
 *     weight = 1 / rho - 1, rho = (between - within) / (between + (n0 - 1) within)
 *
 * with the mean squares between and within the tallies and n0, their typical size, of the analysis of variance: the usual
 * estimator of the intraclass correlation of yes-or-no data, which in the beta-binomial is rho = 1 / (alpha + beta + 1)
 * (Ridout, Demetrio and Firth, Biometrics 55 (1999), 137-148; from memory).
 *
 * The weight is 4 to 40 marks. It is 8 where things were asked once on average or there are fewer than two tallies; 40 where the rates
 * differ no more than by chance. Tallies of nothing asked are left out.
 *
 * @example
 * priorWeight([{ missed: 0, asked: 10 }, { missed: 10, asked: 10 }]); // 4, the least
 */
export function priorWeight(tallies: readonly MissTally[]): number {
  const asked = tallies.filter((tally) => tally.asked > 0);
  const groups = asked.length;
  const total = sum(asked.map((tally) => tally.asked));
  if (groups < 2 || total <= groups) return UNTOLD;
  const common = sum(asked.map((tally) => tally.missed)) / total;
  const rated = asked.map((tally) => ({ n: tally.asked, rate: tally.missed / tally.asked }));
  const between = sum(rated.map(({ n, rate }) => n * (rate - common) ** 2)) / (groups - 1);
  const within = sum(rated.map(({ n, rate }) => n * rate * (1 - rate))) / (total - groups);
  const size = (total - sum(rated.map(({ n }) => n * n)) / total) / (groups - 1);
  const rho = (between - within) / (between + (size - 1) * within);
  if (!(rho > 0)) return MOST;
  return Math.min(MOST, Math.max(LEAST, 1 / rho - 1));
}

/**
 * A miss rate drawn to the common one: the posterior mean of a beta-binomial, (missed + weight x common) / (asked + weight).
 *
 * @example
 * shrunkRate({ missed: 2, asked: 2 }, { common: 0.1, weight: 8 }); // 0.28
 */
export function shrunkRate(
  { missed, asked }: MissTally,
  { common, weight }: { readonly common: number; readonly weight: number },
): number {
  return (missed + weight * common) / (asked + weight);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
