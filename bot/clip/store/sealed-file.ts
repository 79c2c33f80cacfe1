import { createHash } from 'node:crypto';

const MARK = Buffer.from('sum1');
const HASH_BYTES = 32;
const HEAD_BYTES = MARK.length + 4 + HASH_BYTES;

/** A content with a seal before it: a mark, its length and its SHA-256, so that a file cut short or spoilt is told apart. */
export function seal(content: Uint8Array): Buffer {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(content.length);
  return Buffer.concat([MARK, length, sha256(content), content]);
}

/**
 * The content of a sealed file, or null when the file is not whole and unchanged.
 *
 * @example
 * unseal(seal(Uint8Array.of(1, 2))); // => 1, 2
 * unseal(seal(Uint8Array.of(1, 2)).subarray(0, -1)); // => null
 */
export function unseal(file: Buffer): Uint8Array | null {
  if (file.length < HEAD_BYTES || !file.subarray(0, MARK.length).equals(MARK)) return null;
  const content = file.subarray(HEAD_BYTES);
  if (file.readUInt32BE(MARK.length) !== content.length) return null;
  const expected = file.subarray(HEAD_BYTES - HASH_BYTES, HEAD_BYTES);
  return sha256(content).equals(expected) ? content : null;
}

function sha256(content: Uint8Array): Buffer {
  return createHash('sha256').update(content).digest();
}
