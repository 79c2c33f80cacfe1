/** A score beside the child's own earlier scores on the same blueprint. `best` is the highest of the earlier ones. */
export type Comparison =
  | { readonly kind: 'first' }
  | { readonly kind: 'better'; readonly by: number; readonly best: number }
  | { readonly kind: 'same'; readonly best: number }
  | { readonly kind: 'below'; readonly best: number };

/**
 * Compares a score with the best earlier one; `earlier` may be in any order.
 * Throws RangeError when a score is not a whole number from 0 to `asked`: it would come from another blueprint.
 *
 * @example
 * compareWithBest(9, 10, [6, 7]); // { kind: 'better', by: 2, best: 7 }
 */
export function compareWithBest(
  right: number,
  asked: number,
  earlier: readonly number[],
): Comparison {
  for (const score of [right, ...earlier]) {
    if (!isCount(score, asked)) throw new RangeError(`${score} is not a score out of ${asked}`);
  }
  if (earlier.length === 0) return { kind: 'first' };
  const best = Math.max(...earlier);
  if (right > best) return { kind: 'better', by: right - best, best };
  return right === best ? { kind: 'same', best } : { kind: 'below', best };
}

/**
 * The score of a part from the positions of the missed cards, counted from 0.
 * Throws RangeError for a position twice or outside the part.
 *
 * @example
 * scoreFromMissed(10, [2, 7]); // 8
 */
export function scoreFromMissed(asked: number, missed: readonly number[]): number {
  if (new Set(missed).size !== missed.length || !missed.every((at) => isCount(at, asked - 1))) {
    throw new RangeError(`missed cards [${missed.join(', ')}] are not distinct cards of ${asked}`);
  }
  return asked - missed.length;
}

function isCount(value: number, max: number): boolean {
  return Number.isInteger(value) && value >= 0 && value <= max;
}
