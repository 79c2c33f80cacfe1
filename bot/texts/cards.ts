import {
  answerOf,
  type DrillPart,
  type FactId,
  type Language,
  questionOf,
  runNumbers,
} from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { withMeaning } from './gloss.ts';

/**
 * The cards as words, for a phone that shows no picture. `language` is the class's: cards are worded in it, and their meaning
 * stands behind them for who reads another one.
 */
export function partInWords(part: DrillPart, language: Language = 'en'): string {
  if (part.kind === 'run') {
    const [first = part.start, second = part.start] = runNumbers(part);
    return say('cards-run-in-words', { first, second, length: part.length });
  }
  return part.cards
    .map((fact, index) => `${index + 1}. ${questionInWords(fact, language)}`)
    .join('\n');
}

/** A card's question; the time of a clock would be its answer, so a clock stays one. */
function questionInWords(fact: FactId, language: Language): string {
  const question = questionOf(fact, language);
  return fact.startsWith('clock:') ? question : withMeaning(question, fact, language);
}

/**
 * A card's button while marking: its number, question and answer, and a cross once it is tapped as missed. `language` is the
 * class's.
 */
export function cardLabel(
  part: DrillPart,
  card: number,
  missed: boolean,
  language: Language = 'en',
): string {
  const fact = part.kind === 'facts' ? part.cards[card] : undefined;
  if (!fact) return '';
  const isClock = fact.startsWith('clock:');
  const answer = answerOf(fact, language);
  const text = isClock
    ? withMeaning(answer, fact, language)
    : solved(questionOf(fact, language), answer);
  return `${missed ? '✗ ' : ''}${card + 1}. ${text}`;
}

/**
 * A question with its answer.
 *
 * @example
 * solved('7 + ? = 10', '3'); // '7 + 3 = 10'
 * solved('double 7', '14'); // 'double 7 = 14'
 */
export function solved(question: string, answer: string): string {
  return question.includes('?') ? question.replace('?', answer) : `${question} = ${answer}`;
}
