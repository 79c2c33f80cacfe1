import { answerOf } from '../facts/answer.ts';
import type { FactId } from '../facts/fact-id.ts';
import { shapeOf } from '../facts/fact-shape.ts';
import { parseClockPhrase } from './clock-phrase.ts';
import { parseDigitalTime } from './digital-time.ts';
import type { Language } from './language.ts';
import { parseNumberWord } from './number-word.ts';

/** Figures, with or without a space, stop or comma before the last three. */
const FIGURES = /^(\d{1,6}|\d{1,3}[ .,]\d{3})[.!]?$/;

/**
 * Whether a typed or dictated text is the right answer. A number may be in figures (07 is 7, 1 000 is a thousand; a sign
 * is wrong) or in words of the language; a clock in words or in figures, 1 to 12 hours only ("15:30" is not on the dial).
 * A number-word card asks for figures: its own word typed again is no answer. Never throws for a text; throws RangeError
 * for a fact that is none.
 *
 * @example
 * accepts('clock:0330', 'half 3', 'en'); // true
 */
export function accepts(fact: FactId, text: string, language: Language): boolean {
  const shape = shapeOf(fact);
  if (shape.kind === 'clock') {
    const time = parseDigitalTime(text) ?? parseClockPhrase(text, language);
    return time !== null && time.hour === shape.hour && time.minute === shape.minute;
  }
  const number =
    figuresOf(text) ?? (shape.kind === 'word' ? null : parseNumberWord(text, language));
  return number !== null && String(number) === answerOf(fact, language);
}

function figuresOf(text: string): number | null {
  const match = FIGURES.exec(text.normalize('NFKC').trim());
  return match?.[1] === undefined ? null : Number(match[1].replace(/[ .,]/, ''));
}
