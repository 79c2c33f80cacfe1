import type { Entity } from '../state.ts';
import { badRequest } from './envelope.ts';

/** A map, because every object has a `constructor`, and a tag may be called so. */
const TAGS: ReadonlyMap<string, string> = new Map(
  Object.entries({
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
    span: 'spoiler',
  }),
);

const NAMED: ReadonlyMap<string, string> = new Map(
  Object.entries({ lt: '<', gt: '>', amp: '&', quot: '"' }),
);

interface Open {
  readonly tag: string;
  readonly offset: number;
  readonly type: string;
  readonly url?: string | undefined;
  readonly language?: string | undefined;
}

interface Reading {
  text: string;
  readonly open: Open[];
  readonly entities: Entity[];
}

/** One tag, one character reference, or a run of plain text. */
const TOKEN = /<(\/?)([a-z][a-z0-9-]*)?([^>]*)>|&(?:#(\d+)|#x([0-9a-f]+)|([a-z]+));|[^<&]+|[<&]/giu;

/**
 * Reads the service's HTML: the tags of its "HTML style" section, nested, with `href` on links and a language on code.
 * The words for a span of no class are from memory.
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
    reading.text += named === undefined ? whole : (NAMED.get(named) ?? whole);
  }
}

function character(code: number): string {
  if (code === 0 || code > 0x10ffff) throw unreadable('Wrong character reference');
  return String.fromCodePoint(code);
}

function attribute(attributes: string, name: string): string | undefined {
  const found = new RegExp(`\\b${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)'|(\\S+))`, 'i').exec(
    attributes,
  );
  return found?.[1] ?? found?.[2] ?? found?.[3];
}

function openTag(reading: Reading, tag: string, attributes: string, byte: number): void {
  const type = TAGS.get(tag);
  if (type === undefined) throw unreadable(`Unsupported start tag "${tag}" at byte offset ${byte}`);
  const className = attribute(attributes, 'class');
  if (tag === 'span' && className !== 'tg-spoiler')
    throw unreadable(`Tag "span" must have class "tg-spoiler" at byte offset ${byte}`);
  const isLong = tag === 'blockquote' && /\bexpandable\b/i.test(attributes);
  const language = tag === 'code' ? /^language-(\S+)$/.exec(className ?? '')?.[1] : undefined;
  reading.open.push({
    tag,
    type: isLong ? 'expandable_blockquote' : type,
    offset: reading.text.length,
    url: attribute(attributes, 'href'),
    language,
  });
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
  if (length > 0) addEntity(reading, open, length);
}

function addEntity({ entities, open: around }: Reading, open: Open, length: number): void {
  const { type, offset, url, language } = open;
  if (type === 'text_link') {
    if (url) entities.push({ type, offset, length, url });
    return;
  }
  const block = around.at(-1);
  // Code of a named language is the block around it (SPEC, "HTML style").
  if (language !== undefined && block?.type === 'pre' && block.offset === offset) {
    around[around.length - 1] = { ...block, language };
    return;
  }
  entities.push({
    type,
    offset,
    length,
    ...(type === 'pre' && language !== undefined ? { language } : {}),
  });
}
