const BOMS: readonly { readonly bytes: readonly number[]; readonly encoding: string }[] = [
  { bytes: [0xef, 0xbb, 0xbf], encoding: 'utf-8' },
  { bytes: [0xff, 0xfe], encoding: 'utf-16le' },
  { bytes: [0xfe, 0xff], encoding: 'utf-16be' },
];

/**
 * Windows-1252 from 0x80 to 0x9f; everywhere else a byte is its own code point. The decoder that Node 20 calls so reads these
 * as Latin-1 and loses the apostrophe.
 */
const WINDOWS_1252 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/**
 * The text in a file, without the mark at its start. UTF-8 and UTF-16 with a byte order mark (Unicode Standard, 23.8), UTF-8
 * without one, and, where it is no UTF-8, the Windows-1252 that spreadsheet programs still write (encoding.spec.whatwg.org).
 * Null when it is no text: text has no NUL.
 *
 * @example
 * decodeText(new Uint8Array([0x5a, 0x6f, 0xeb])); // 'Zoë'
 */
export function decodeText(bytes: Uint8Array): string | null {
  const marked = BOMS.find((bom) => bom.bytes.every((byte, at) => bytes[at] === byte));
  const text = marked
    ? decode(bytes, marked.encoding)
    : (decode(bytes, 'utf-8') ?? decodeBytes(bytes));
  return text === null || text.includes('\0') ? null : text;
}

/** Null when the bytes are not in this encoding. */
function decode(bytes: Uint8Array, encoding: string): string | null {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function decodeBytes(bytes: Uint8Array): string {
  const latin = Buffer.from(bytes).toString('latin1');
  return latin.replace(/[\x80-\x9f]/g, (byte) => WINDOWS_1252[byte.charCodeAt(0) - 0x80] ?? byte);
}
