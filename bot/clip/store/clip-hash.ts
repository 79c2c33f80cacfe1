import { createHash } from 'node:crypto';
import { type ClipInput, usualMaxBytes } from '../clip.ts';

/** Raised whenever the same input would give other bytes, so that clips kept from before are not served. */
const MAKING = 1;

/**
 * Names a clip by what is seen and heard in it, as 64 hexadecimal digits (SHA-256). Equal clips have equal names, whoever
 * they are for.
 *
 * @example
 * clipHash(tenCards) === clipHash(structuredClone(tenCards)); // => true
 */
export function clipHash({ frames, sound, maxBytes }: ClipInput): string {
  const limit = maxBytes ?? usualMaxBytes(frames.length);
  const hash = createHash('sha256');
  hash.update(JSON.stringify({ making: MAKING, sound, limit }));
  for (const { picture, seconds } of frames) {
    const { width, height } = picture;
    const content = 'svg' in picture ? Buffer.from(picture.svg) : picture.pixels;
    const kind = 'svg' in picture ? 'svg' : 'pixels';
    // Each content is led by its length, so no two lists of frames run together to the same bytes.
    hash.update(JSON.stringify({ kind, width, height, seconds, length: content.length }));
    hash.update(content);
  }
  return hash.digest('hex');
}
