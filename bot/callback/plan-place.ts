/**
 * A place in a plan: which week of the term, 0 for the week plan itself; which part of it, from 0; and which rung of a mixed part,
 * 0 for the first.
 */
export interface PlanPlace {
  readonly week: number;
  readonly part: number;
  readonly slot: number;
}

/**
 * A place as a button carries it, in one number: the part alone for a part of the week plan that is not mixed.
 *
 * @example
 * packPlace({ week: 12, part: 3, slot: 1 }); // 1213
 */
export function packPlace({ week, part, slot }: PlanPlace): number {
  return 100 * week + 10 * slot + part;
}

/** The place that a number stands for. */
export function unpackPlace(number: number): PlanPlace {
  return {
    week: Math.floor(number / 100),
    slot: Math.floor((number % 100) / 10),
    part: number % 10,
  };
}
