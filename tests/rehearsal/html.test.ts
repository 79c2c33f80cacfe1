import { describe, expect, it } from 'vitest';
import { parseHtml } from '../../rehearsal/bot-api/html.ts';
import { trimmed, withDetected } from '../../rehearsal/entities.ts';

const PREFIX = "Bad Request: can't parse entities: ";

describe('parseHtml', () => {
  it('turns tags into entities', () => {
    expect(parseHtml('<b>6</b> &lt; 7')).toEqual({
      text: '6 < 7',
      entities: [{ type: 'bold', offset: 0, length: 1 }],
    });
  });

  it('nests tags and counts UTF-16 units', () => {
    expect(parseHtml('🐦 <i>a<b>b</b></i>').entities).toEqual([
      { type: 'italic', offset: 3, length: 2 },
      { type: 'bold', offset: 4, length: 1 },
    ]);
  });

  it('reads links and character references', () => {
    const source = '<a href="https://example.org/">here</a> &#65;&#x42;&nope;&constructor;';
    expect(parseHtml(source)).toEqual({
      text: 'here AB&nope;&constructor;',
      entities: [{ type: 'text_link', offset: 0, length: 4, url: 'https://example.org/' }],
    });
  });

  it('reads hidden text, long quotations and code of a language', () => {
    const source =
      '<span class="tg-spoiler">7</span><blockquote expandable>a</blockquote>' +
      '<pre><code class="language-csv">b</code></pre><code>c</code>';
    expect(parseHtml(source)).toEqual({
      text: '7abc',
      entities: [
        { type: 'spoiler', offset: 0, length: 1 },
        { type: 'expandable_blockquote', offset: 1, length: 1 },
        { type: 'pre', offset: 2, length: 1, language: 'csv' },
        { type: 'code', offset: 3, length: 1 },
      ],
    });
  });

  it.each([
    ['<span>x</span>', 'Tag "span" must have class "tg-spoiler" at byte offset 0'],
    ['<constructor>x', 'Unsupported start tag "constructor" at byte offset 0'],
    ['<h1>x</h1>', 'Unsupported start tag "h1" at byte offset 0'],
    ['é<b>x</i>', 'Unmatched end tag at byte offset 6, expected "</b>", found "</i>"'],
    ['<b>x', 'Can\'t find end tag corresponding to start tag "b"'],
    ['x</b>', 'Unexpected end tag at byte offset 1'],
    ['1 < 2', 'Unclosed start tag at byte offset 2'],
  ])('refuses %s', (source, detail) => {
    expect(() => parseHtml(source)).toThrow(PREFIX + detail);
  });
});

describe('entities the service finds', () => {
  it('are commands and links', () => {
    expect(withDetected('/start abc', [])).toEqual([{ type: 'bot_command', offset: 0, length: 6 }]);
    expect(withDetected('see https://t.me/a?start=b.', [])).toEqual([
      { type: 'url', offset: 4, length: 22 },
    ]);
  });

  it('are neither inside links nor on top of given ones', () => {
    expect(withDetected('https://x.org/help', [])).toHaveLength(1);
    const given = [{ type: 'text_link', offset: 0, length: 5, url: 'https://example.org' }];
    expect(withDetected('/help', given)).toEqual(given);
  });
});

describe('trimmed', () => {
  it('moves and cuts entities with the text', () => {
    expect(trimmed(' hi ', [{ type: 'bold', offset: 1, length: 3 }])).toEqual({
      text: 'hi',
      entities: [{ type: 'bold', offset: 0, length: 2 }],
    });
  });

  it('drops entities that lie outside', () => {
    expect(trimmed('hi', [{ type: 'bold', offset: 7, length: 3 }]).entities).toEqual([]);
  });
});
