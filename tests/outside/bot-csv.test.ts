import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cell, digestTable } from '../../bot/digest/digest-table.ts';
import { oneLine } from '../../bot/input/one-line.ts';
import { summaryOf, week } from '../bot/support/kingfisher.ts';

/**
 * A reader after the grammar of RFC 4180, section 2 (from memory), and nothing more lenient:
 *
 *   file        = record *(CRLF record) [CRLF]
 *   record      = field *(COMMA field)
 *   field       = (escaped / non-escaped)
 *   escaped     = DQUOTE *(TEXTDATA / COMMA / CR / LF / 2DQUOTE) DQUOTE
 *   non-escaped = *TEXTDATA
 *
 * TEXTDATA is widened from ASCII to all of Unicode but the controls, as RFC 7111 does for text/csv in UTF-8.
 */
const FIELD = /(?:"((?:[^"]|"")*)"|([^",\p{Cc}]*))(,|\r\n|$)/uy;

function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  FIELD.lastIndex = 0;
  while (FIELD.lastIndex < text.length) {
    const at = FIELD.lastIndex;
    const match = FIELD.exec(text);
    if (!match) throw new SyntaxError(`no field at ${at}`);
    record.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
    if (match[3] === ',') continue;
    records.push(record);
    record = [];
  }
  return records;
}

describe('the reader', () => {
  it.each<[string, string[][]]>([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
    ['a,,\r\n', [['a', '', '']]],
  ])('takes the RFC’s own examples: %j', (text, records) => {
    expect(readCsv(text)).toEqual(records);
  });

  it.each(['a"b,c\r\n', '"a"b\r\n', 'a\nb\r\n', '"a'])('refuses %j', (text) => {
    expect(() => readCsv(text)).toThrow(SyntaxError);
  });
});

const anyNickname = fc.oneof(
  fc.string({ unit: 'binary', minLength: 1, maxLength: 30 }).map((text) => oneLine(text)),
  fc.string({
    unit: fc.constantFrom('"', ',', '\r', '\n', "'", '=', 'x', 'ש', '👩‍🚀'),
    minLength: 1,
  }),
);

describe('the table of a digest', () => {
  it('gives back every nickname, whatever is in it', () => {
    fc.assert(
      fc.property(fc.array(anyNickname, { maxLength: 5 }), (nicknames) => {
        const summary = summaryOf(nicknames.map((nickname, at) => week(at + 1, nickname)));
        const [header, ...rows] = readCsv(digestTable(summary).slice(1));
        expect(rows.every((row) => row.length === header?.length)).toBe(true);
        const written = nicknames.map((nickname) =>
          /^[=+\-@\r\n＝＋－＠]/.test(nickname) ? `'${nickname}` : nickname,
        );
        expect(rows.map(([, nickname]) => nickname)).toEqual(written);
      }),
    );
  });

  it('ends every line with CRLF, the last one too', () => {
    const table = digestTable(summaryOf([week(1, 'Wren'), week(2, 'Otto')]));
    expect(table.match(/\r\n/g)).toHaveLength(3);
    expect(table).toMatch(/[^\r\n]\r\n$/);
    expect(table.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  it('begins with the byte order mark of UTF-8, once', () => {
    // Unicode Standard, section 23.8: U+FEFF is EF BB BF in UTF-8.
    const bytes = Buffer.from(digestTable(summaryOf([week(1, 'Zoë')])), 'utf8');
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(bytes.toString('utf8').lastIndexOf('\ufeff')).toBe(0);
  });
});

/** Source: OWASP, "CSV Injection", https://owasp.org/www-community/attacks/CSV_Injection (the list is from memory). */
describe('a name that a spreadsheet would run', () => {
  it.each([
    "=cmd|' /C calc'!A0",
    '=1+1',
    '+1+1',
    '-1+1',
    '@SUM(1+1)',
    '\t=1+1',
    '\r=1+1',
    '\n=1+1',
    '＝1+1',
    '＋1',
    '－1',
    '＠SUM(1)',
    '=HYPERLINK("http://127.0.0.1","Otto")',
  ])('is made text by an apostrophe: %j', (nickname) => {
    expect(cell(nickname).replace(/^"/, '').slice(0, 2)).toBe(`'${nickname.charAt(0)}`);
  });

  it.each(['Wren', 'Anne-Marie', 'A=B', '1+1', "'Otto", 'שרה', '👩‍🚀'])(
    'is only that when it begins so: %s',
    (nickname) => {
      expect(cell(nickname)).toBe(nickname);
    },
  );
});
