import { answerOf, type FactId, type Language, questionOf } from '../../drills/index.ts';
import { readerLanguage, say } from '../language/index.ts';
import { solved } from './cards.ts';

/**
 * A fact with its answer: `3 + 4 = 7`, `the clock at half past three`, `after 95 in fives, 100`. In the reader's language,
 * unless another one is asked for.
 *
 * @example
 * factInWords('clock:0330'); // 'the clock at half past three'
 */
export function factInWords(fact: FactId, language: Language = readerLanguage()): string {
  const question = questionOf(fact, language);
  const answer = answerOf(fact, language);
  if (fact.startsWith('clock:')) return say('facts-clock', { time: answer });
  if (fact.startsWith('next:')) return say('facts-next', { question, answer });
  return solved(question, answer);
}
