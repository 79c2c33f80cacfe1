import type { FactId } from './fact-id.ts';
import { familyOf } from './near-twin.ts';

/**
 * Whether a fact is easy because a nought is in it: 7 + 0, 7 − 0, 7 − 7, 0 + ? = 7. Adding or taking away nought is the first
 * step of every order of difficulty (common practice, no source). A clock has none. Throws RangeError for a text that is no
 * fact.
 *
 * @example
 * hasNought('sub:7-7'); // true
 */
export function hasNought(fact: FactId): boolean {
  return familyOf(fact).startsWith('0&');
}
