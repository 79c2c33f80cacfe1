import { oneLine } from '../input/one-line.ts';
import { say } from '../language/index.ts';
import { name } from './words.ts';

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
/** Code units a character may take before it is cut as well: a pile of marks would not fit in a message. */
const UNITS_A_CHARACTER = 16;

/**
 * What somebody typed, to be shown back: in quotation marks, on one line, and cut between characters when it is long. A reply
 * that repeated everything would not fit in a message.
 *
 * @example
 * quote('half past six or so', 9); // '“half past…”'
 */
export function quote(text: string, most = 60): string {
  return say('quote-typed', { text: shorten(text, most) });
}

/**
 * Other people's words on one line, with at most `most` characters; a dot-dot-dot says that some are left out.
 *
 * @example
 * shorten('Half term and two days more', 9); // 'Half term…'
 */
export function shorten(text: string, most: number): string {
  const whole = oneLine(text);
  const first = [...graphemes.segment(whole)].slice(0, most).map(({ segment }) => segment);
  const shown = oneLine(first.join('').slice(0, most * UNITS_A_CHARACTER));
  return shown === whole ? name(whole) : `${name(shown)}…`;
}
