import { type Difficulty, easierOf, harder } from './difficulty-scale.ts';

/**
 * How hard the number word of `n` is to read, 1 to 5: to ten 1, to twenty and full tens 2, to a hundred 3, to two hundred 4.
 * This and the rules below are ours, without a source.
 *
 * @example
 * wordDifficulty(70); // 2
 */
export function wordDifficulty(n: number): Difficulty {
  if (n <= 10) return 1;
  if (n <= 20 || (n <= 100 && n % 10 === 0)) return 2;
  if (n <= 100) return 3;
  return n <= 200 ? 4 : 5;
}

/**
 * How hard one step of a count is, 0 to 5: in ones 0, in tens 1, in fives and twos 2, other steps 3; one more for counting
 * back, for standing off the multiples of the step, and for going over a hundred.
 *
 * @example
 * stepDifficulty(98, 5); // 4
 */
export function stepDifficulty(n: number, step: number): Difficulty {
  const size = Math.abs(step);
  const base = STEP_BASE.get(size) ?? 3;
  const after = n + step;
  const crosses = Math.ceil(Math.max(n, after) / 100) - Math.floor(Math.min(n, after) / 100) > 1;
  return harder(base, [step < 0, n % size !== 0, crosses].filter(Boolean).length);
}

/**
 * How hard `a × b` is, 0 to 5, by the easier of its two tables: nought 0, one 1, two and ten 2, five 3, three and four 4.
 *
 * @example
 * productDifficulty(3, 5); // 3
 */
export function productDifficulty(a: number, b: number): Difficulty {
  return easierOf(tableDifficulty(a), tableDifficulty(b));
}

const STEP_BASE: ReadonlyMap<number, Difficulty> = new Map([
  [1, 0],
  [10, 1],
  [5, 2],
  [2, 2],
]);

const TABLES: ReadonlyMap<number, Difficulty> = new Map([
  [0, 0],
  [1, 1],
  [2, 2],
  [10, 2],
  [5, 3],
  [3, 4],
  [4, 4],
]);

function tableDifficulty(n: number): Difficulty {
  return TABLES.get(n) ?? 5;
}
