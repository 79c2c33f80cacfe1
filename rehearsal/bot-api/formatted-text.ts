import { trimmed, withDetected } from '../entities.ts';
import type { Entity } from '../state.ts';
import { withinBounds } from './entity-bounds.ts';
import { badRequest } from './envelope.ts';
import { parseHtml } from './html.ts';
import { parseMarkdownV2 } from './markdown-v2.ts';

/** Code points after formatting is taken out (SPEC sendMessage). */
export const TEXT_LIMIT = 4096;
/** Code points after formatting is taken out (SPEC sendPhoto). */
export const CAPTION_LIMIT = 1024;
/** Bytes before any parsing. */
const RAW_LIMIT = 32_768;

export interface TextInput {
  readonly text: string;
  readonly parseMode?: string | undefined;
  readonly entities?: readonly Entity[] | undefined;
}

function parsed({ text, parseMode, entities = [] }: TextInput): {
  text: string;
  entities: readonly Entity[];
} {
  if (!parseMode) return { text, entities: withinBounds(text, entities) };
  if (/^html$/i.test(parseMode)) return parseHtml(text);
  if (/^markdownv2$/i.test(parseMode)) return parseMarkdownV2(text);
  throw badRequest(
    /^markdown$/i.test(parseMode)
      ? 'the rehearsal reads HTML, MarkdownV2 and entities, not old Markdown'
      : 'unsupported parse_mode',
  );
}

function formatted(input: TextInput): { text: string; entities: Entity[]; codePoints: number } {
  if (Buffer.byteLength(input.text) > RAW_LIMIT) throw badRequest('text is too long');
  const plain = parsed(input);
  const cut = trimmed(plain.text, plain.entities);
  return {
    text: cut.text,
    entities: withDetected(cut.text, cut.entities),
    codePoints: [...cut.text].length,
  };
}

/** A message's text, checked. Throws a 400 when it is empty or longer than {@link TEXT_LIMIT}. */
export function messageText(input: TextInput): { text: string; entities: Entity[] } {
  const { text, entities, codePoints } = formatted(input);
  if (text === '') throw badRequest('message text is empty');
  if (codePoints > TEXT_LIMIT) throw badRequest('message is too long');
  return { text, entities };
}

/** A caption, checked; it may be empty. Throws a 400 when it is longer than {@link CAPTION_LIMIT}. */
export function captionText(input: TextInput): { text: string; entities: Entity[] } {
  const { text, entities, codePoints } = formatted(input);
  if (codePoints > CAPTION_LIMIT) throw badRequest('message caption is too long');
  return { text, entities };
}
