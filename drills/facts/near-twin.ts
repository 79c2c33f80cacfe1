import type { FactId } from './fact-id.ts';
import { shapeOf } from './fact-shape.ts';

/**
 * The two parts a fact's numbers are made of, smaller first, as a key: 3 + 4, 4 + 3, 7 − 3 and 7 − 4 are all `3&4`.
 * 3 × 4 and 4 × 3 are `3x4`. A word, a clock and a step of a count are each a family of their own. Throws RangeError for a
 * text that is no fact.
 *
 * @example
 * familyOf('sub:7-3'); // '3&4'
 */
export function familyOf(fact: FactId): string {
  const shape = shapeOf(fact);
  switch (shape.kind) {
    case 'add':
      return key(shape.a, shape.b);
    case 'gap':
      return key(shape.a, shape.total - shape.a);
    case 'lead':
      return key(shape.b, shape.total - shape.b);
    case 'sub':
      return key(shape.b, shape.a - shape.b);
    case 'less':
      return key(shape.rest, shape.a - shape.rest);
    case 'from':
      return key(shape.b, shape.rest);
    case 'double':
      return key(shape.n, shape.n);
    case 'half':
      return key(shape.n / 2, shape.n / 2);
    case 'times':
      return `${Math.min(shape.a, shape.b)}x${Math.max(shape.a, shape.b)}`;
    case 'word':
    case 'clock':
    case 'next':
      return fact;
  }
}

/**
 * Whether one fact gives the other away when they stand side by side: different facts made of the same three numbers
 * (common practice, no source). A fact is not its own twin.
 *
 * @example
 * isNearTwin('sub:7-3', 'sub:7-4'); // true
 */
export function isNearTwin(a: FactId, b: FactId): boolean {
  return a !== b && familyOf(a) === familyOf(b);
}

function key(a: number, b: number): string {
  return `${Math.min(a, b)}&${Math.max(a, b)}`;
}
