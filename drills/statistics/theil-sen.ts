/** One observation, for instance an evening and its score. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** y = intercept + slope x. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

/**
 * A trend that one odd day cannot bend: the median of the slopes between all pairs of points, and the median of what it leaves
 * of y. Pairs at the same x have no slope and are left out (Sen, Journal of the American Statistical Association 63 (1968),
 * 1379-1389, after Theil 1950). Null when no pair is left, as with fewer than two points. The order of the points plays no
 * part. Throws RangeError when a number is not finite.
 *
 * @example
 * theilSen([{ x: 0, y: 6 }, { x: 1, y: 7 }, { x: 2, y: 2 }, { x: 3, y: 9 }, { x: 4, y: 10 }]); // { slope: 1, intercept: 6 }
 */
export function theilSen(points: readonly Point[]): Line | null {
  for (const { x, y } of points) {
    if (!Number.isFinite(x + y)) throw new RangeError(`(${x}, ${y}) is no point`);
  }
  const slopes = points.flatMap((one, index) =>
    points
      .slice(index + 1)
      .filter((other) => other.x !== one.x)
      .map((other) => (other.y - one.y) / (other.x - one.x)),
  );
  const slope = median(slopes);
  const intercept = slope === null ? null : median(points.map(({ x, y }) => y - slope * x));
  return slope === null || intercept === null ? null : { slope, intercept };
}

/** The middle value, or the mean of the two middle ones; null of nothing. */
function median(values: readonly number[]): number | null {
  const sorted = values.toSorted((one, other) => one - other);
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.floor((sorted.length - 1) / 2)];
  return upper === undefined || lower === undefined ? null : (lower + upper) / 2;
}
