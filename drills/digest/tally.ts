import type { Tally } from './summary.ts';

/** Adds up scores. */
export function tallyOf(parts: readonly Tally[]): Tally {
  return parts.reduce(
    (total, part) => ({ right: total.right + part.right, asked: total.asked + part.asked }),
    { right: 0, asked: 0 },
  );
}
