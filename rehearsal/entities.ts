import type { Entity } from './state.ts';

const COMMAND = /(?<![\w/])\/[a-zA-Z0-9_]{1,32}(?:@\w{3,32})?/g;
const LINK = /\bhttps?:\/\/[^\s<>"']*[^\s<>"'.,;:!?)]/g;

/** Kinds of formatting (SPEC MessageEntity). */
export const ENTITY_TYPES: ReadonlySet<string> = new Set([
  'mention',
  'hashtag',
  'cashtag',
  'bot_command',
  'url',
  'email',
  'phone_number',
  'bold',
  'italic',
  'underline',
  'strikethrough',
  'spoiler',
  'blockquote',
  'expandable_blockquote',
  'code',
  'pre',
  'text_link',
  'text_mention',
  'custom_emoji',
  'date_time',
]);

function found(text: string, pattern: RegExp, type: string): Entity[] {
  return [...text.matchAll(pattern)].map((match) => ({
    type,
    offset: match.index,
    length: match[0].length,
  }));
}

function overlaps(a: Entity, b: Entity): boolean {
  return a.offset < b.offset + b.length && b.offset < a.offset + a.length;
}

/**
 * Adds the commands and links the service finds by itself, where no given entity already lies.
 *
 * @example withDetected('/start abc', []) // [{ type: 'bot_command', offset: 0, length: 6 }]
 */
export function withDetected(text: string, given: readonly Entity[]): Entity[] {
  const links = found(text, LINK, 'url').filter(
    (link) => !given.some((entity) => overlaps(entity, link)),
  );
  const taken = [...given, ...links];
  const commands = found(text, COMMAND, 'bot_command').filter(
    (command) => !taken.some((entity) => overlaps(entity, command)),
  );
  return [...taken, ...commands].sort((a, b) => a.offset - b.offset || b.length - a.length);
}

/**
 * Trims white space at both ends as the service does, moving and cutting the entities with the text.
 *
 * @example trimmed(' hi ', [{ type: 'bold', offset: 1, length: 3 }]) // { text: 'hi', entities: [{ type: 'bold', offset: 0, length: 2 }] }
 */
export function trimmed(
  text: string,
  entities: readonly Entity[],
): { text: string; entities: Entity[] } {
  const cut = text.trim();
  const shift = text.length - text.trimStart().length;
  const moved = entities.flatMap((entity) => {
    const start = Math.max(0, entity.offset - shift);
    const end = Math.min(cut.length, entity.offset - shift + entity.length);
    return end > start ? [{ ...entity, offset: start, length: end - start }] : [];
  });
  return { text: cut, entities: moved };
}
