import type { CardFace } from './card-face.ts';
import type { FactId } from './fact-id.ts';
import { shapeOf } from './fact-shape.ts';

const MINUS = '\u2212';

/**
 * What a child sees for a fact. Throws RangeError for a text that is no fact.
 *
 * @example
 * faceOf('gap:7+10'); // { kind: 'text', text: '7 + ? = 10' }
 */
export function faceOf(fact: FactId): CardFace {
  const shape = shapeOf(fact);
  switch (shape.kind) {
    case 'word':
      return { kind: 'text', text: String(shape.n) };
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
      return { kind: 'text', text: `after ${shape.n}` };
    case 'times':
      return { kind: 'text', text: `${shape.a} \u00d7 ${shape.b}` };
    case 'double':
      return { kind: 'text', text: `double ${shape.n}` };
    case 'half':
      return { kind: 'text', text: `half of ${shape.n}` };
    case 'clock':
      return { kind: 'clock', hour: shape.hour, minute: shape.minute };
  }
}

/**
 * A card in words, for lists and screen readers. A clock is only called a clock: saying more would give the answer
 * (WCAG 2.2, success criterion 1.1.1, on pictures that are a test).
 *
 * @example
 * questionOf('clock:0330'); // 'a clock'
 */
export function questionOf(fact: FactId): string {
  const face = faceOf(fact);
  return face.kind === 'text' ? face.text : 'a clock';
}
