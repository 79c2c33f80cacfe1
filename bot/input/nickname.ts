import { oneLine } from './one-line.ts';

/** Longest nickname, in characters as people count them. It has to fit on a button and in a picture. */
export const NICKNAME_LENGTH = 30;
/** No character people use is made of more code points than this; without a limit, one could be a thousand long. */
const CODE_POINTS_A_CHARACTER = 8;

const LIST_MARK = /^(?:\d{1,3}[.)]|[-*•])(?:\s|$)/u;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * A nickname as it is stored: without list numbers, hidden characters and double spaces; empty when nothing is left. What
 * looks like markup stays as it is: it is text.
 *
 * @example
 * cleanNickname(' 3. Otto   B '); // 'Otto B'
 */
export function cleanNickname(line: string): string {
  return oneLine(oneLine(line).replace(LIST_MARK, ''));
}

/**
 * Length in characters as people count them: an emoji made of several code points is one. A pile of marks on one letter
 * counts again for every eight code points, so that 30 characters always fit in a message.
 *
 * @example
 * lengthOf('Zoë 👩‍🚀'); // 5
 */
export function lengthOf(text: string): number {
  return [...graphemes.segment(text)].reduce(
    (sum, { segment }) => sum + Math.ceil([...segment].length / CODE_POINTS_A_CHARACTER),
    0,
  );
}
