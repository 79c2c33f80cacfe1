import { createHash, randomBytes } from 'node:crypto';

/** Random bytes in a join code: 128 bits, which nobody guesses. */
const CODE_BYTES = 16;

/** A new code of 22 characters from the base64url alphabet, which the chat service allows in a start link. */
export function newCode(): string {
  return randomBytes(CODE_BYTES).toString('base64url');
}

/**
 * What is stored instead of a code. A plain SHA-256 is enough, because the code itself is random: there is nothing to guess
 * that a slow hash would protect.
 */
export function hashCode(code: string): string {
  return createHash('sha256').update(code, 'utf8').digest('hex');
}
