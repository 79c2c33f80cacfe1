import type { Entity } from '../state.ts';
import { badRequest } from './envelope.ts';

const TAGS: Readonly<Record<string, string>> = {
  b: 'bold',
  strong: 'bold',
  i: 'italic',
  em: 'italic',
  u: 'underline',
  ins: 'underline',
  s: 'strikethrough',
  strike: 'strikethrough',
  del: 'strikethrough',
  code: 'code',
  pre: 'pre',
  a: 'text_link',
  blockquote: 'blockquote',
  'tg-spoiler': 'spoiler',
};

const NAMED: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"' };

interface Open {
  readonly tag: string;
  readonly offset: number;
  readonly url?: string | undefined;
}

interface Reading {
  text: string;
  readonly open: Open[];
  readonly entities: Entity[];
}

/** One tag, one character reference, or a run of plain text. */
const TOKEN = /<(\/?)([a-z][a-z0-9-]*)?([^>]*)>|&(?:#(\d+)|#x([0-9a-f]+)|([a-z]+));|[^<&]+|[<&]/giu;

/**
 * Reads the service's HTML: the tags of its "HTML style" section, nested, with `href` on links.
 * Throws a 400 with the service's text for an unknown, unmatched or unclosed tag; offsets in it are bytes.
 *
 * @example parseHtml('<b>6</b> &lt; 7') // { text: '6 < 7', entities: [{ type: 'bold', offset: 0, length: 1 }] }
 */
export function parseHtml(source: string): { text: string; entities: Entity[] } {
  const reading: Reading = { text: '', open: [], entities: [] };
  for (const token of source.matchAll(TOKEN)) readToken(reading, token, source);
  const unclosed = reading.open.at(-1);
  if (unclosed !== undefined) {
    throw unreadable(`Can't find end tag corresponding to start tag "${unclosed.tag}"`);
  }
  const entities = reading.entities.sort((a, b) => a.offset - b.offset || b.length - a.length);
  return { text: reading.text, entities };
}

function unreadable(detail: string): Error {
  return badRequest(`can't parse entities: ${detail}`);
}

function readToken(reading: Reading, token: RegExpExecArray, source: string): void {
  const [whole, slash, tag, attributes = '', decimal, hex, named] = token;
  const byte = Buffer.byteLength(source.slice(0, token.index));
  if (whole.length > 1 && whole.startsWith('<')) {
    if (slash === '/') closeTag(reading, (tag ?? '').toLowerCase(), byte);
    else openTag(reading, (tag ?? '').toLowerCase(), attributes, byte);
  } else if (whole === '<') {
    throw unreadable(`Unclosed start tag at byte offset ${byte}`);
  } else if (decimal !== undefined || hex !== undefined) {
    reading.text += character(
      decimal === undefined ? Number.parseInt(hex ?? '', 16) : Number(decimal),
    );
  } else {
    reading.text += named === undefined ? whole : (NAMED[named] ?? whole);
  }
}

function character(code: number): string {
  if (code === 0 || code > 0x10ffff) throw unreadable('Wrong character reference');
  return String.fromCodePoint(code);
}

function openTag(reading: Reading, tag: string, attributes: string, byte: number): void {
  if (TAGS[tag] === undefined)
    throw unreadable(`Unsupported start tag "${tag}" at byte offset ${byte}`);
  const href = /\bhref\s*=\s*(?:"([^"]*)"|'([^']*)'|(\S+))/i.exec(attributes);
  reading.open.push({ tag, offset: reading.text.length, url: href?.[1] ?? href?.[2] ?? href?.[3] });
}

function closeTag(reading: Reading, tag: string, byte: number): void {
  const open = reading.open.pop();
  if (open === undefined) throw unreadable(`Unexpected end tag at byte offset ${byte}`);
  if (tag !== '' && tag !== open.tag) {
    throw unreadable(
      `Unmatched end tag at byte offset ${byte}, expected "</${open.tag}>", found "</${tag}>"`,
    );
  }
  const length = reading.text.length - open.offset;
  const type = TAGS[open.tag];
  if (length === 0 || type === undefined) return;
  if (type !== 'text_link') reading.entities.push({ type, offset: open.offset, length });
  else if (open.url) reading.entities.push({ type, offset: open.offset, length, url: open.url });
}
