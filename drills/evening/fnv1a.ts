const OFFSET_BASIS = 0x811c9dc5;
const PRIME = 0x01000193;
const ASCII = 0x80;

/**
 * The 32-bit FNV-1a hash of a text's UTF-8 bytes, 0 to 2^32 - 1 (Fowler, Noll and Vo; constants from the IETF draft
 * draft-eastlake-fnv). It spreads seeds; it protects nothing. The hash runs byte by byte, so that the hash of a longer text
 * can go on `from` the hash of its beginning.
 *
 * @example
 * fnv1a('a'); // 0xe40c292c
 */
export function fnv1a(text: string, from = OFFSET_BASIS): number {
  let hash = from;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    // Seeds are nearly always ASCII, where the bytes are the characters; the encoder costs more than all the rest.
    if (code >= ASCII) return hashBytes(new TextEncoder().encode(text.slice(at)), hash);
    hash = Math.imul(hash ^ code, PRIME);
  }
  return hash >>> 0;
}

function hashBytes(bytes: Uint8Array, from: number): number {
  let hash = from;
  for (const byte of bytes) hash = Math.imul(hash ^ byte, PRIME);
  return hash >>> 0;
}
