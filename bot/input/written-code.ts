/** What somebody typed, read as a join code; `letters` is how many letters and figures there were. */
export type TypedCode =
  | { readonly kind: 'code'; readonly code: string }
  | { readonly kind: 'mistyped'; readonly letters: number };

/**
 * Figures and capitals without I, L, O and U, in the order of their values: Crockford's Base 32, made to be read out and typed
 * (https://www.crockford.com/base32.html, from memory).
 */
const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
/** Letters and figures in a written code: 128 bits of code and 12 of check, five in each. */
export const WRITTEN_LENGTH = 28;
const GROUP = 4;
const CODE_BYTES = 16;
// The largest prime that fits in 12 bits: no single wrong letter, and no two neighbours that changed places, keep the rest.
const CHECK = 4093n;
const CHECK_BITS = 12n;
/** Fewer figures than this are a sentence rather than a code: of a thousand codes, three have fewer. */
const FEWEST_FIGURES = 3;

/**
 * A join code as it stands on paper, to be typed by hand: seven groups of four, with a check for slips of the finger.
 *
 * @throws {RangeError} for a text that is no join code.
 * @example
 * writeCode('AAAAAAAAAAAAAAAAAAAAAQ'); // '0000 0000 0000 0000 0000 0000 0401'
 */
export function writeCode(code: string): string {
  const bytes = Buffer.from(code, 'base64url');
  if (bytes.length !== CODE_BYTES || bytes.toString('base64url') !== code) {
    throw new RangeError(`Got a code of ${code.length} characters: a join code has 22.`);
  }
  const value = BigInt(`0x${bytes.toString('hex')}`);
  let rest = (value << CHECK_BITS) | (value % CHECK);
  let written = '';
  for (let i = 0; i < WRITTEN_LENGTH; i += 1) {
    if (i > 0 && i % GROUP === 0) written = ` ${written}`;
    written = (ALPHABET[Number(rest & 31n)] ?? '') + written;
    rest >>= 5n;
  }
  return written;
}

/**
 * Reads a code that was typed off paper: in capitals or small letters, in any groups, O for nought, I or L for one. Null for a
 * text that does not look like a code, give or take one letter.
 *
 * @example
 * readCode('oooo oooo oooo oooo oooo oooo o4ol'); // { kind: 'code', code: 'AAAAAAAAAAAAAAAAAAAAAQ' }
 */
export function readCode(text: string): TypedCode | null {
  const letters = text
    .toUpperCase()
    .replace(/[ \-.]/g, '')
    .replace(/[IL]/g, '1')
    .replace(/O/g, '0');
  if (!/^[0-9A-HJKMNP-TV-Z]{27,29}$/.test(letters)) return null;
  if (letters.length === WRITTEN_LENGTH) {
    const code = decode(letters);
    if (code !== null) return { kind: 'code', code };
  }
  const figures = text.replace(/\D/g, '').length;
  return figures < FEWEST_FIGURES ? null : { kind: 'mistyped', letters: letters.length };
}

function decode(letters: string): string | null {
  let all = 0n;
  for (const letter of letters) all = (all << 5n) | BigInt(ALPHABET.indexOf(letter));
  const value = all >> CHECK_BITS;
  if (value % CHECK !== all % (1n << CHECK_BITS)) return null;
  return Buffer.from(value.toString(16).padStart(2 * CODE_BYTES, '0'), 'hex').toString('base64url');
}
