import { clockPhrase } from '../wording/clock-phrase.ts';
import type { Language } from '../wording/language.ts';
import type { FactId } from './fact-id.ts';
import { shapeOf } from './fact-shape.ts';

/**
 * What the child should say: digits for a number, words of the class's language for a clock.
 * Throws RangeError for a text that is no fact and for a clock between two five-minute marks.
 *
 * @example
 * answerOf('clock:0330', 'de'); // 'halb vier'
 */
export function answerOf(fact: FactId, language: Language = 'en'): string {
  const shape = shapeOf(fact);
  switch (shape.kind) {
    case 'word':
      return String(shape.n);
    case 'add':
      return String(shape.a + shape.b);
    case 'gap':
      return String(shape.total - shape.a);
    case 'lead':
      return String(shape.total - shape.b);
    case 'sub':
      return String(shape.a - shape.b);
    case 'less':
      return String(shape.a - shape.rest);
    case 'from':
      return String(shape.rest + shape.b);
    case 'next':
      return String(shape.n + shape.step);
    case 'times':
      return String(shape.a * shape.b);
    case 'double':
      return String(shape.n * 2);
    case 'half':
      return String(shape.n / 2);
    case 'clock':
      return clockPhrase(shape.hour, shape.minute, language);
  }
}
