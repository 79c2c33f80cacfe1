import { ENTITY_TYPES } from '../entities.ts';
import type { Entity } from '../state.ts';
import { badRequest } from './envelope.ts';

const SECOND_HALF = /[\udc00-\udfff]/;

function isInside(text: string, at: number): boolean {
  return SECOND_HALF.test(text[at] ?? '') && at > 0;
}

/**
 * Checks entities a bot counted itself. Offset and length are UTF-16 code units (SPEC MessageEntity). Throws a 400 for one
 * that begins before the text, ends after it, or cuts a character in two; the words are from memory. An entity of no
 * length, one that begins after the text, and one of a kind that is not published are left out.
 *
 * @example
 * withinBounds('Wren', [{ type: 'bold', offset: 4, length: 2 }]); // => []
 */
export function withinBounds(text: string, entities: readonly Entity[]): Entity[] {
  return entities.flatMap((entity) => {
    const { type, offset, length } = entity;
    const end = offset + length;
    if (offset < 0 || length < 0) throw badRequest(`entity has incorrect bounds at ${offset}`);
    if (length === 0 || offset >= text.length || !ENTITY_TYPES.has(type)) return [];
    if (end > text.length)
      throw badRequest(
        `entity beginning at UTF-16 offset ${offset} ends after the end of the text at UTF-16 offset ${text.length}`,
      );
    if (isInside(text, offset))
      throw badRequest(
        `entity beginning at UTF-16 offset ${offset} starts in a middle of a UTF-16 symbol`,
      );
    if (isInside(text, end))
      throw badRequest(
        `entity beginning at UTF-16 offset ${offset} ends in a middle of a UTF-16 symbol`,
      );
    return [{ ...entity }];
  });
}
