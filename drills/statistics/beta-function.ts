// Lanczos' approximation with g = 7 and nine terms, in the coefficients of P. Godfrey (2001), written down from memory.
const LANCZOS_G = 7;
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
  -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
  1.5056327351493116e-7,
];

/**
 * The natural logarithm of the gamma function, for x above 0, to about 14 digits (Lanczos, SIAM Journal on Numerical Analysis
 * B 1 (1964), 86-96). Throws RangeError for other x.
 *
 * @example
 * logGamma(5); // 3.178054 = ln 24
 */
export function logGamma(x: number): number {
  if (!(x > 0 && Number.isFinite(x))) throw new RangeError(`log gamma of ${x}: x must be above 0`);
  // Below a half the sum loses digits; one step of the recurrence leads back to where it keeps them.
  if (x < 0.5) return logGamma(x + 1) - Math.log(x);
  const [first = 0, ...rest] = LANCZOS;
  const sum = rest.reduce((total, term, index) => total + term / (x + index), first);
  const t = x + LANCZOS_G - 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

/**
 * The regularised incomplete beta function I_x(a, b): the chance that a Beta(a, b) value is at most x. `a` and `b` are above
 * 0, `x` is 0 to 1; RangeError otherwise. By the continued fraction of DLMF 8.17.22, on the side of the mean where it
 * converges fast, I_x(a, b) = 1 - I_(1-x)(b, a) otherwise (DLMF 8.17.4).
 *
 * @example
 * regularisedBeta(0.8, 4, 1); // 0.4096 = 0.8 to the fourth
 */
export function regularisedBeta(x: number, a: number, b: number): number {
  if (!(a > 0 && b > 0 && Number.isFinite(a + b))) {
    throw new RangeError(`Beta(${a}, ${b}): both numbers must be above 0`);
  }
  checkChance(x);
  if (x === 0 || x === 1) return x;
  if (x > (a + 1) / (a + b + 2)) return 1 - belowMean(1 - x, b, a);
  return belowMean(x, a, b);
}

/** Throws RangeError unless `p` is a chance, 0 to 1. */
export function checkChance(p: number): void {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`${p} is no chance: 0 to 1`);
}

function belowMean(x: number, a: number, b: number): number {
  const logFront =
    a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  return (Math.exp(logFront) / a) * continuedFraction(x, a, b);
}

const CLOSE_ENOUGH = 1e-15;
const MOST_ROUNDS = 10_000;

/**
 * The continued fraction by Lentz's method as Thompson and Barnett changed it (Journal of Computational Physics 64 (1986),
 * 490-509): numerator and denominator are kept as ratios of neighbours, and a ratio of 0 is moved a hair away from it.
 */
function continuedFraction(x: number, a: number, b: number): number {
  let numerator = 1;
  let denominator = 1 / awayFromNought(1 - ((a + b) * x) / (a + 1));
  let value = denominator;
  const step = (coefficient: number) => {
    denominator = 1 / awayFromNought(1 + coefficient * denominator);
    numerator = awayFromNought(1 + coefficient / numerator);
    value *= numerator * denominator;
    return Math.abs(numerator * denominator - 1);
  };
  for (let m = 1; m <= MOST_ROUNDS; m += 1) {
    step((m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)));
    const change = step((-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)));
    if (change < CLOSE_ENOUGH) break;
  }
  return value;
}

function awayFromNought(value: number): number {
  return Math.abs(value) < 1e-300 ? 1e-300 : value;
}
