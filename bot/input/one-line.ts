const CONTROL = /\p{Cc}/gu;
// Half characters, and the marks that turn writing direction round. The joiner inside emoji (U+200D) stays.
const HIDDEN = /[\p{Surrogate}\u00ad\u061c\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/gu;
const NOTHING_TO_SEE = /^[\s\p{Default_Ignorable_Code_Point}]*$/u;

/**
 * What somebody typed, on one line: without hidden characters and double spaces; empty when there is nothing to see.
 *
 * @example
 * oneLine('Half\n  term\u200b'); // 'Half term'
 */
export function oneLine(text: string): string {
  const line = text
    .replace(CONTROL, ' ')
    .replace(HIDDEN, '')
    .normalize('NFC')
    .replace(/\s+/gu, ' ')
    .trim();
  return NOTHING_TO_SEE.test(line) ? '' : line;
}
