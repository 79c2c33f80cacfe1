/**
 * Mann and Kendall's test for a trend, of values in the order they came: `s` is how many pairs rise less how many fall, `z` how
 * many standard errors that is from what chance order gives (0 where all values are the same).
 *
 *     z = (|s| - 1) / sqrt((n (n - 1) (2n + 5) - sum t (t - 1) (2t + 5)) / 18), with the sign of s
 *
 * The sum is over groups of t equal values, which scores out of ten are full of; the 1 is the correction for whole numbers.
 * Sources: Mann, Econometrica 13 (1945), 245-259; Kendall, Rank Correlation Methods.
 *
 * @example
 * mannKendall([3, 4, 5, 8, 8, 8, 8, 8]); // { s: 18, z: 2.436874 }
 */
export function mannKendall(values: readonly number[]): { s: number; z: number } {
  const n = values.length;
  let s = 0;
  values.forEach((value, index) => {
    for (const later of values.slice(index + 1)) s += Math.sign(later - value);
  });
  const sizes = new Map<number, number>();
  for (const value of values) sizes.set(value, (sizes.get(value) ?? 0) + 1);
  const ties = [...sizes.values()].reduce((total, size) => total + spread(size), 0);
  const variance = (spread(n) - ties) / 18;
  if (s === 0 || variance === 0) return { s, z: 0 };
  return { s, z: (Math.sign(s) * (Math.abs(s) - 1)) / Math.sqrt(variance) };
}

function spread(n: number): number {
  return n * (n - 1) * (2 * n + 5);
}
