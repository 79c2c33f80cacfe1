import {
  answerOf,
  type DrillPart,
  type FactId,
  type Language,
  questionOf,
} from '../../drills/index.ts';
import { readerLanguage, say } from '../language/index.ts';

/**
 * What the words of a card mean in the reader's language: of a clock its time, of other cards the question. Null where both are
 * the same, and for sums, which have no words.
 *
 * @example
 * meaningOf('double:7', 'de'); // 'double 7'
 * meaningOf('add:3+4', 'de'); // null
 */
export function meaningOf(fact: FactId, language: Language): string | null {
  const reader = readerLanguage();
  const words = fact.startsWith('clock:') ? answerOf : questionOf;
  const meaning = words(fact, reader);
  return meaning === words(fact, language) ? null : meaning;
}

/**
 * Words of a card in the class's language, and behind them what they mean, where the reader reads another one.
 *
 * @example
 * withMeaning('halb vier', 'clock:0330', 'de'); // 'halb vier (half past three)'
 */
export function withMeaning(text: string, fact: FactId, language: Language): string {
  const meaning = meaningOf(fact, language);
  return meaning === null ? text : say('gloss-beside', { text, meaning });
}

/**
 * One card of a part as an example of what its words mean; null where nothing needs saying. Clocks have no words until their
 * answers are shown, and those carry their meaning themselves.
 *
 * @example
 * meaningLine(part, 'de'); // '“verdopple 7” means “double 7”.'
 */
export function meaningLine(part: DrillPart, language: Language): string | null {
  if (part.kind === 'run') return null;
  for (const fact of part.cards) {
    const meaning = fact.startsWith('clock:') ? null : meaningOf(fact, language);
    if (meaning !== null) return say('gloss-means', { text: questionOf(fact, language), meaning });
  }
  return null;
}
