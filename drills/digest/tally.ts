import type { Tally } from './summary.ts';
import type { PartScore } from './week.ts';

/** Adds up part scores. */
export function tallyOf(parts: readonly PartScore[]): Tally {
  return parts.reduce(
    (total, part) => ({ right: total.right + part.right, asked: total.asked + part.asked }),
    { right: 0, asked: 0 },
  );
}
