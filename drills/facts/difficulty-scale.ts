const SCALE = [0, 1, 2, 3, 4, 5] as const;

/** How hard a fact is to begin with, from 0, the easiest, to 5. */
export type Difficulty = (typeof SCALE)[number];

/**
 * So many whole steps harder, 5 at most.
 *
 * @example
 * harder(4, 2); // 5
 */
export function harder(difficulty: Difficulty, steps: number): Difficulty {
  return SCALE[difficulty + steps] ?? 5;
}

/**
 * The easier of two.
 *
 * @example
 * easierOf(4, 2); // 2
 */
export function easierOf(one: Difficulty, other: Difficulty): Difficulty {
  return SCALE[Math.min(one, other)] ?? 0;
}
