/** Longest nickname, in characters as people count them. It has to fit on a button and in a picture. */
export const NICKNAME_LENGTH = 30;

// Control characters and the marks that turn writing direction round. The joiner inside emoji (U+200D) stays.
const HIDDEN = /[\p{Cc}\u00ad\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/gu;
const LIST_MARK = /^\s*(?:\d{1,3}[.)]|[-*•])\s+/u;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * A nickname as it is stored: without list numbers, hidden characters and double spaces; empty when nothing is left. What
 * looks like markup stays as it is: it is text.
 *
 * @example
 * cleanNickname(' 3. Otto   B '); // 'Otto B'
 */
export function cleanNickname(line: string): string {
  return line
    .replace(HIDDEN, ' ')
    .replace(LIST_MARK, '')
    .normalize('NFC')
    .replace(/\s+/gu, ' ')
    .trim();
}

/**
 * Length in characters as people count them: an emoji made of several code points is one.
 *
 * @example
 * lengthOf('Zoë 👩‍🚀'); // 5
 */
export function lengthOf(text: string): number {
  return [...graphemes.segment(text)].length;
}
