import { clockDifficulty } from './clock-difficulty.ts';
import { type Difficulty, harder } from './difficulty-scale.ts';
import type { FactId } from './fact-id.ts';
import { shapeOf } from './fact-shape.ts';
import { productDifficulty, stepDifficulty, wordDifficulty } from './other-difficulty.ts';
import { sumDifficulty } from './sum-difficulty.ts';

/**
 * How hard a fact is before anything is known of the child: 0, the easiest, to 5. The order is our own starting rule and no
 * norm; that larger numbers are harder and ties, ones and tens easier is found in many studies of the problem-size effect
 * (Barrouillet and Thevenot 2013, Cognition 128, 35), the numbers given to it are ours.
 *
 * Taking away, halving and a missing addend stand one step above their addition, a missing number of a take-away two, all
 * capped at 5. Taking away 0 or 1 is as easy as adding it. Throws RangeError for a text that is no fact.
 *
 * @example
 * difficultyOf('add:7+8'); // 5
 */
export function difficultyOf(fact: FactId): Difficulty {
  const shape = shapeOf(fact);
  switch (shape.kind) {
    case 'word':
      return wordDifficulty(shape.n);
    case 'add':
      return sumDifficulty(shape.a, shape.b);
    case 'gap':
      return harder(sumDifficulty(shape.a, shape.total - shape.a), 1);
    case 'lead':
      return harder(sumDifficulty(shape.b, shape.total - shape.b), 1);
    case 'sub':
      if (shape.b === 0) return 0;
      if (shape.b === 1) return 1;
      return harder(sumDifficulty(shape.b, shape.a - shape.b), 1);
    case 'less':
      return harder(sumDifficulty(shape.rest, shape.a - shape.rest), 2);
    case 'from':
      return harder(sumDifficulty(shape.b, shape.rest), 2);
    case 'double':
      return sumDifficulty(shape.n, shape.n);
    case 'half':
      return harder(sumDifficulty(shape.n / 2, shape.n / 2), 1);
    case 'clock':
      return clockDifficulty(shape.minute);
    case 'next':
      return stepDifficulty(shape.n, shape.step);
    case 'times':
      return productDifficulty(shape.a, shape.b);
  }
}
