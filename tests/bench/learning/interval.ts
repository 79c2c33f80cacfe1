/** Student's t for a two-sided 95 % interval, by degrees of freedom from 1 (the usual printed table, from memory). */
const T_95 = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145,
  2.131, 2.12, 2.11, 2.101, 2.093, 2.086,
];
const T_BEYOND = 1.96;

/** A mean with half the width of its 95 % confidence interval; NaN for a width that one value cannot give. */
export interface Interval {
  readonly mean: number;
  readonly half: number;
}

/**
 * The mean of some values that are taken to be normal, and how sure it is. Throws RangeError for no values.
 *
 * @example
 * intervalOf([1, 2, 3]); // { mean: 2, half: 2.484 }
 */
export function intervalOf(values: readonly number[]): Interval {
  const n = values.length;
  if (n === 0) throw new RangeError('no values to take a mean of');
  const mean = values.reduce((sum, value) => sum + value, 0) / n;
  if (n === 1) return { mean, half: Number.NaN };
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1);
  return { mean, half: (T_95[n - 2] ?? T_BEYOND) * Math.sqrt(variance / n) };
}
