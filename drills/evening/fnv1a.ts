const OFFSET_BASIS = 0x811c9dc5;
const PRIME = 0x01000193;

/**
 * The 32-bit FNV-1a hash of a text's UTF-8 bytes, 0 to 2^32 - 1 (Fowler, Noll and Vo; constants from the IETF draft
 * draft-eastlake-fnv). It spreads seeds; it protects nothing.
 *
 * @example
 * fnv1a('a'); // 0xe40c292c
 */
export function fnv1a(text: string): number {
  let hash = OFFSET_BASIS;
  for (const byte of new TextEncoder().encode(text)) {
    hash = Math.imul(hash ^ byte, PRIME);
  }
  return hash >>> 0;
}
