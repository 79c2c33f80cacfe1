import { expect, it } from 'vitest';
import { readRange } from '../../rehearsal/byte-range.ts';

/**
 * Source: RFC 9110, HTTP Semantics, 14.1.2 "Byte Ranges": its worked examples for a representation of 10000 bytes, and its
 * rules for ends beyond the file, suffixes and ranges that cannot be satisfied. Written from memory of the text.
 */
const SIZE = 10_000;

it.each([
  ['the first 500 bytes', 'bytes=0-499', 0, 499],
  ['the second 500 bytes', 'bytes=500-999', 500, 999],
  ['the final 500 bytes by a suffix', 'bytes=-500', 9500, 9999],
  ['the final 500 bytes by their first', 'bytes=9500-', 9500, 9999],
  ['a last position beyond the end', 'bytes=9500-20000', 9500, 9999],
  ['a suffix longer than the file', 'bytes=-20000', 0, 9999],
  ['one byte', 'bytes=0-0', 0, 0],
  ['the unit in capitals', 'BYTES=0-0', 0, 0],
])('RFC 9110: %s', (_, header, first, last) => {
  expect(readRange(header, SIZE)).toEqual({ first, last });
});

it.each([
  ['that begins at the end', 'bytes=10000-'],
  ['that begins beyond it', 'bytes=99999999999999999999-'],
  ['of no bytes at the end', 'bytes=-0'],
])('RFC 9110: a range %s cannot be satisfied', (_, header) => {
  expect(readRange(header, SIZE)).toBe('none');
});

it('RFC 9110: no range of an empty file can be satisfied', () => {
  expect(readRange('bytes=0-', 0)).toBe('none');
  expect(readRange('bytes=-5', 0)).toBe('none');
});

it.each([
  ['no header', undefined],
  ['another unit', 'lines=0-4'],
  ['an end before the beginning', 'bytes=9-5'],
  ['neither end', 'bytes=-'],
  ['words', 'bytes=a-b'],
  ['several ranges, which a server need not read', 'bytes=0-0,-1'],
])('RFC 9110: the whole file answers %s', (_, header) => {
  expect(readRange(header, SIZE)).toBe('all');
});
