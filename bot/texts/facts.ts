import { answerOf, type FactId, questionOf } from '../../drills/index.ts';
import { solved } from './evening.ts';

/**
 * A fact with its answer: `3 + 4 = 7`, `the clock at half past three`, `after 95 in fives, 100`.
 *
 * @example
 * factInWords('clock:0330'); // 'the clock at half past three'
 */
export function factInWords(fact: FactId): string {
  if (fact.startsWith('clock:')) return `the clock at ${answerOf(fact)}`;
  if (fact.startsWith('next:')) return `${questionOf(fact)}, ${answerOf(fact)}`;
  return solved(questionOf(fact), answerOf(fact));
}
