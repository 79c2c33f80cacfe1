import { describe, expect, it } from 'vitest';
import { decodeText } from '../../bot/input/class-list/decode-text.ts';
import { readCsv } from '../../bot/input/class-list/read-csv.ts';

/** RFC 4180, section 2, rules 1 to 7, with the examples as printed there; CRLF stands where it is written out. */
describe('class lists as text follow RFC 4180', () => {
  const two = [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ];

  it.each([
    ['1: each record on a line of its own', 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n', two],
    ['2: the last line may have no line break', 'aaa,bbb,ccc\r\nzzz,yyy,xxx', two],
    [
      '3: there may be a header line',
      'field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [['field_name', 'field_name', 'field_name'], ...two],
    ],
    ['4: spaces are part of a field', 'aaa, bbb ,ccc', [['aaa', ' bbb ', 'ccc']]],
    ['5: fields may be in double quotes', '"aaa","bbb","ccc"\r\nzzz,yyy,xxx', two],
    [
      '6: line breaks, double quotes and commas in quoted fields',
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '7: a double quote in a field is written twice',
      '"aaa","b""bb","ccc"',
      [['aaa', 'b"bb', 'ccc']],
    ],
  ])('rule %s', (_rule, text, table) => {
    expect(readCsv(text)).toEqual({ table });
  });

  it('rule 5: double quotes may not stand in a field that is not quoted', () => {
    expect(readCsv('aaa,b"bb,ccc\r\n')).toEqual({ problem: { kind: 'quote', row: 1 } });
  });
});

/**
 * Index windows-1252 of the Encoding Standard (https://encoding.spec.whatwg.org/index-windows-1252.txt): the bytes 0x80 to 0x9f
 * that differ from Latin-1, from memory of the table, the five unassigned ones left out.
 */
it('class lists in Windows-1252 have the letters of the Encoding Standard', () => {
  const table: readonly [number, number][] = [
    [0x80, 0x20ac],
    [0x8a, 0x0160],
    [0x8c, 0x0152],
    [0x8e, 0x017d],
    [0x92, 0x2019],
    [0x9a, 0x0161],
    [0x9e, 0x017e],
    [0x9f, 0x0178],
    [0xe9, 0x00e9],
    [0xf1, 0x00f1],
  ];
  for (const [byte, codePoint] of table) {
    expect(decodeText(new Uint8Array([byte]))).toBe(String.fromCodePoint(codePoint));
  }
});
