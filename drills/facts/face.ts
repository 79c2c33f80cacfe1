import { CARD_WORDS } from '../wording/card-words.ts';
import type { Language } from '../wording/language.ts';
import { numberWord } from '../wording/number-word.ts';
import type { CardFace } from './card-face.ts';
import type { FactId } from './fact-id.ts';
import { shapeOf } from './fact-shape.ts';

const MINUS = '\u2212';

/**
 * What a child sees for a fact, worded in the class's language. Throws RangeError for a text that is no fact and for the word
 * of a number above 1000.
 *
 * @example
 * faceOf('gap:7+10'); // { kind: 'text', text: '7 + ? = 10' }
 */
export function faceOf(fact: FactId, language: Language = 'en'): CardFace {
  const shape = shapeOf(fact);
  const words = CARD_WORDS[language];
  switch (shape.kind) {
    case 'word':
      return { kind: 'text', text: numberWord(shape.n, language) };
    case 'add':
      return { kind: 'text', text: `${shape.a} + ${shape.b}` };
    case 'gap':
      return { kind: 'text', text: `${shape.a} + ? = ${shape.total}` };
    case 'lead':
      return { kind: 'text', text: `? + ${shape.b} = ${shape.total}` };
    case 'sub':
      return { kind: 'text', text: `${shape.a} ${MINUS} ${shape.b}` };
    case 'less':
      return { kind: 'text', text: `${shape.a} ${MINUS} ? = ${shape.rest}` };
    case 'from':
      return { kind: 'text', text: `? ${MINUS} ${shape.b} = ${shape.rest}` };
    case 'next':
      return { kind: 'text', text: words.next(shape.n, shape.step) };
    case 'times':
      return { kind: 'text', text: `${shape.a} \u00d7 ${shape.b}` };
    case 'double':
      return { kind: 'text', text: words.double(shape.n) };
    case 'half':
      return { kind: 'text', text: words.half(shape.n) };
    case 'clock':
      return { kind: 'clock', hour: shape.hour, minute: shape.minute };
  }
}

/**
 * A card in words, for lists and screen readers. A clock is only called a clock: saying more would give the answer
 * (WCAG 2.2, success criterion 1.1.1, on pictures that are a test). Throws RangeError as {@link faceOf} does.
 *
 * @example
 * questionOf('clock:0330'); // 'a clock'
 */
export function questionOf(fact: FactId, language: Language = 'en'): string {
  const face = faceOf(fact, language);
  return face.kind === 'text' ? face.text : CARD_WORDS[language].clock;
}
