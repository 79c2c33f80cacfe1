/**
 * The `count` places among `candidates` where `keys` is highest, highest first; all of them when there are no more. Of equal
 * ones the earlier candidate wins. It keeps a short sorted list instead of sorting everything.
 *
 * @example
 * bestOf([0, 1, 2], new Float64Array([5, 9, 7]), 2); // [1, 2]
 */
export function bestOf(candidates: readonly number[], keys: Float64Array, count: number): number[] {
  const best: number[] = [];
  if (count <= 0) return best;
  for (const candidate of candidates) {
    const key = keys[candidate] ?? 0;
    if (best.length === count && key <= keyAt(keys, best, count - 1)) continue;
    let at = best.length < count ? best.length : count - 1;
    while (at > 0 && keyAt(keys, best, at - 1) < key) {
      best[at] = best[at - 1] ?? candidate;
      at -= 1;
    }
    if (at < count) best[at] = candidate;
  }
  return best;
}

function keyAt(keys: Float64Array, places: readonly number[], at: number): number {
  return keys[places[at] ?? -1] ?? Number.NEGATIVE_INFINITY;
}
