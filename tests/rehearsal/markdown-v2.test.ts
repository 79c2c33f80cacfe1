import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseMarkdownV2 } from '../../rehearsal/bot-api/markdown-v2.ts';

const PREFIX = "Bad Request: can't parse entities: ";

describe('parseMarkdownV2', () => {
  it('reads marks and escaped characters', () => {
    expect(parseMarkdownV2('*6* \\< 7')).toEqual({
      text: '6 < 7',
      entities: [{ type: 'bold', offset: 0, length: 1 }],
    });
  });

  it('keeps escaped characters that are reserved', () => {
    expect(parseMarkdownV2('1\\. a\\_b')).toEqual({ text: '1. a_b', entities: [] });
  });

  it('reads links, and a bracket without an address as text', () => {
    expect(parseMarkdownV2('[here](https://example.org/a\\)b) [there]')).toEqual({
      text: 'here there',
      entities: [{ type: 'text_link', offset: 0, length: 4, url: 'https://example.org/a)b' }],
    });
  });

  it('reads code of a language as it stands', () => {
    expect(parseMarkdownV2('```csv\nWren,9*\n``` `a_b`')).toEqual({
      text: 'Wren,9*\n a_b',
      entities: [
        { type: 'pre', offset: 0, length: 8, language: 'csv' },
        { type: 'code', offset: 9, length: 3 },
      ],
    });
  });

  it('reads a quotation of several lines', () => {
    expect(parseMarkdownV2('>one\n>*two*\nthree')).toEqual({
      text: 'one\ntwo\nthree',
      entities: [
        { type: 'blockquote', offset: 0, length: 7 },
        { type: 'bold', offset: 4, length: 3 },
      ],
    });
  });

  it.each([
    ['6.', "Character '.' is reserved and must be escaped with the preceding '\\'"],
    ['a|b', "Character '|' is reserved and must be escaped with the preceding '\\'"],
    ['é*x', "Can't find end of Bold entity at byte offset 2"],
    ['[x](y', "Can't find end of a URL at byte offset 3"],
    ['`x', "Can't find end of Code entity at byte offset 0"],
  ])('refuses %s', (source, detail) => {
    expect(() => parseMarkdownV2(source)).toThrow(PREFIX + detail);
  });

  it('gives back any text in which everything is escaped', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const escaped = text.replace(/[\\_*[\]()~`>#+\-=|{}.!]/g, '\\$&');
        expect(parseMarkdownV2(escaped)).toEqual({ text, entities: [] });
      }),
    );
  });
});
