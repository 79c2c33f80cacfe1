import type { Difficulty } from './difficulty-scale.ts';

/**
 * How hard `a + b` is, 0 to 5, whichever number comes first (our rule, no source): 0 with a nought; 1 with a one, and ties to
 * 5 + 5; 2 other sums to 10; 3 ties 6 + 6 to 9 + 9, and ten or more and ones that do not cross a ten; 4 nine and a digit,
 * and larger sums that end on a full ten; 5 whatever else crosses a ten.
 *
 * @example
 * sumDifficulty(9, 4); // 4
 */
export function sumDifficulty(a: number, b: number): Difficulty {
  const smaller = Math.min(a, b);
  if (smaller === 0) return 0;
  if (smaller === 1) return 1;
  if (a + b <= 10) return a === b ? 1 : 2;
  if (a < 10 && b < 10) return oneDigitDifficulty(a, b);
  const ones = (a % 10) + (b % 10);
  if (ones < 10) return 3;
  return ones === 10 ? 4 : 5;
}

function oneDigitDifficulty(a: number, b: number): Difficulty {
  if (a === b) return 3;
  return a === 9 || b === 9 ? 4 : 5;
}
