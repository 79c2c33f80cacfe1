/** A range of plausible values, both ends included. */
export interface Interval {
  readonly lower: number;
  readonly upper: number;
}

/**
 * The Wilson score interval for a proportion: `k` of `n` were right, `z` standard errors wide (1.959964 for 95 %).
 *
 *     (p + z^2 / 2n -+ z sqrt(p (1 - p) / n + z^2 / 4n^2)) / (1 + z^2 / n), p = k / n
 *
 * Source: Wilson, Journal of the American Statistical Association 22 (1927), 209-212; method 3 of Newcombe, Statistics in
 * Medicine 17 (1998), 857-872. Of nothing asked, everything is plausible: 0 to 1. None right begins at 0 exactly, all right
 * ends at 1 exactly. Throws RangeError unless `k` and `n` are whole with 0 <= k <= n, and z is above 0.
 *
 * @example
 * wilson(8, 10, 1.959964); // { lower: 0.490162, upper: 0.943318 }
 */
export function wilson(k: number, n: number, z: number): Interval {
  checkCount(k, n);
  if (!(z > 0 && Number.isFinite(z))) throw new RangeError(`z is ${z}: it must be above 0`);
  if (n === 0) return { lower: 0, upper: 1 };
  const p = k / n;
  const spread = z * Math.sqrt((p * (1 - p)) / n + z ** 2 / (4 * n ** 2));
  const middle = p + z ** 2 / (2 * n);
  const scale = 1 + z ** 2 / n;
  return {
    lower: k === 0 ? 0 : (middle - spread) / scale,
    upper: k === n ? 1 : (middle + spread) / scale,
  };
}

/** Throws RangeError unless `k` of `n` is a count: whole numbers, 0 <= k <= n. */
export function checkCount(k: number, n: number): void {
  if (!Number.isInteger(n) || n < 0) throw new RangeError(`${n} asked: a whole number from 0 up`);
  if (!Number.isInteger(k) || k < 0 || k > n) {
    throw new RangeError(`${k} right of ${n}: a whole number from 0 to ${n}`);
  }
}
