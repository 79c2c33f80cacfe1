import type { Entity } from '../state.ts';
import { badRequest } from './envelope.ts';

/** Marks that begin and end a stretch; the longer of two that fit is meant. */
const PAIRS: readonly (readonly [mark: string, type: string, name: string])[] = [
  ['```', 'pre', 'PreCode'],
  ['__', 'underline', 'Underline'],
  ['||', 'spoiler', 'Spoiler'],
  ['`', 'code', 'Code'],
  ['*', 'bold', 'Bold'],
  ['_', 'italic', 'Italic'],
  ['~', 'strikethrough', 'Strikethrough'],
];

const RESERVED = '_*[]()~`>#+-=|{}.!';

interface Open {
  readonly mark: string;
  readonly type: string;
  readonly name: string;
  readonly offset: number;
  readonly byte: number;
  readonly language?: string;
}

/** How far the source was read, and what came of it. */
interface Reading {
  readonly source: string;
  at: number;
  text: string;
  readonly open: Open[];
  readonly entities: Entity[];
}

function unreadable(detail: string): Error {
  return badRequest(`can't parse entities: ${detail}`);
}

function byteAt({ source }: Reading, at: number): number {
  return Buffer.byteLength(source.slice(0, at));
}

/**
 * Reads the service's MarkdownV2 (SPEC, "MarkdownV2 style"): nested marks, links, code, quotations, and a backslash before
 * each reserved character that is meant as it stands. Throws a 400 with the service's text; offsets in it are bytes. The
 * words for a stretch without an end are from memory. Custom emoji and the long form of a quotation are not read.
 *
 * @example
 * parseMarkdownV2('*6* \\< 7'); // => { text: '6 < 7', entities: [{ type: 'bold', offset: 0, length: 1 }] }
 */
export function parseMarkdownV2(source: string): { text: string; entities: Entity[] } {
  const reading: Reading = { source, at: 0, text: '', open: [], entities: [] };
  while (reading.at < source.length) step(reading);
  endQuotation(reading);
  const unclosed = reading.open.at(-1);
  if (unclosed !== undefined) {
    throw unreadable(`Can't find end of ${unclosed.name} entity at byte offset ${unclosed.byte}`);
  }
  const entities = reading.entities.sort((a, b) => a.offset - b.offset || b.length - a.length);
  return { text: reading.text, entities };
}

function step(reading: Reading): void {
  const { source, at } = reading;
  const character = source[at] ?? '';
  const top = reading.open.at(-1);
  const next = source.charCodeAt(at + 1);
  if (character === '\\' && next > 0 && next < 127) keep(reading, source[at + 1] ?? '', 2);
  else if (top !== undefined && endsHere(reading, top)) close(reading, top);
  else if (top?.type === 'pre' || top?.type === 'code') keepVerbatim(reading, character);
  else if (character === '\n') endLine(reading);
  else if (character === '>' && isLineStart(reading)) openQuotation(reading);
  else if (character === ']' && top?.mark === '[') closeLink(reading, top);
  else if (RESERVED.includes(character)) open(reading, character);
  else keep(reading, character, 1);
}

function endsHere({ source, at }: Reading, { mark }: Open): boolean {
  if (mark === '[' || mark === '>') return false;
  // Two underscores are never two ends of italics (SPEC, "MarkdownV2 style": "__ is always greedily treated").
  if (mark === '_' && source.startsWith('__', at)) return false;
  return source.startsWith(mark, at);
}

function keepVerbatim(reading: Reading, character: string): void {
  if (character === '`') throw reserved(character);
  keep(reading, character, 1);
}

function keep(reading: Reading, character: string, read: number): void {
  reading.text += character;
  reading.at += read;
}

function reserved(character: string): Error {
  return unreadable(
    `Character '${character}' is reserved and must be escaped with the preceding '\\'`,
  );
}

function open(reading: Reading, character: string): void {
  const { source, at } = reading;
  const pair = PAIRS.find(([mark]) => source.startsWith(mark, at));
  if (pair === undefined && character !== '[') throw reserved(character);
  const [mark, type, name] = pair ?? ['[', 'text_link', 'TextUrl'];
  const language = mark === '```' ? /^[^\s`]+(?=\n)/.exec(source.slice(at + 3))?.[0] : undefined;
  reading.open.push({
    ...{ mark, type, name, offset: reading.text.length, byte: byteAt(reading, at) },
    ...(language === undefined ? {} : { language }),
  });
  reading.at += mark.length + (language?.length ?? 0);
  // The line break after the opening marks is not part of the code.
  if (mark === '```' && source[reading.at] === '\n') reading.at += 1;
}

function close(reading: Reading, { mark, type, offset, language }: Open): void {
  reading.open.pop();
  reading.at += mark.length;
  const length = reading.text.length - offset;
  if (length === 0) return;
  const more = language === undefined ? {} : { language };
  reading.entities.push({ type, offset, length, ...more });
}

function closeLink(reading: Reading, { offset }: Open): void {
  const { source, at } = reading;
  reading.open.pop();
  const address = /^\(((?:\\[\s\S]|[^)\\])*)\)/.exec(source.slice(at + 1));
  if (address === null && source[at + 1] === '(')
    throw unreadable(`Can't find end of a URL at byte offset ${byteAt(reading, at + 1)}`);
  reading.at += 1 + (address?.[0].length ?? 0);
  const length = reading.text.length - offset;
  const url = address?.[1]?.replace(/\\(.)/g, '$1') ?? '';
  if (length > 0 && url !== '') reading.entities.push({ type: 'text_link', offset, length, url });
}

function isLineStart({ source, at }: Reading): boolean {
  return at === 0 || source[at - 1] === '\n';
}

function openQuotation(reading: Reading): void {
  const isOpen = reading.open.some(({ mark }) => mark === '>');
  const byte = byteAt(reading, reading.at);
  const offset = reading.text.length;
  if (!isOpen)
    reading.open.push({ mark: '>', type: 'blockquote', name: 'BlockQuote', offset, byte });
  reading.at += 1;
}

function endLine(reading: Reading): void {
  if (reading.source[reading.at + 1] !== '>') endQuotation(reading);
  keep(reading, '\n', 1);
}

function endQuotation(reading: Reading): void {
  const top = reading.open.at(-1);
  if (top?.mark !== '>') return;
  close(reading, { ...top, mark: '' });
}
