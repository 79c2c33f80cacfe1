import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseShape } from '../../../drills/facts/fact-shape.ts';
import {
  add,
  clock,
  double,
  from,
  gap,
  half,
  lead,
  less,
  next,
  parseFactId,
  RUNGS,
  sub,
  times,
  word,
} from '../../../drills/index.ts';

const FACTS = [
  'word:0',
  'word:14',
  'word:9999',
  'add:3+4',
  'add:0+0',
  'add:9999+1',
  'gap:7+10',
  'gap:10+10',
  'lead:7+10',
  'lead:0+0',
  'sub:9-4',
  'sub:4-4',
  'less:10-7',
  'less:10-10',
  'from:3-7',
  'from:7-3',
  'from:0-0',
  'double:7',
  'half:14',
  'half:0',
  'clock:0330',
  'clock:1259',
  'next:95+5',
  'next:0+1',
  'next:100-1',
  'next:1-1',
  'times:3x5',
  'times:0x0',
];

const NO_FACTS = [
  'sub:4-9',
  'gap:11+10',
  'lead:11+10',
  'less:7-10',
  'half:7',
  'clock:0030',
  'clock:1300',
  'clock:0360',
  'clock:330',
  'next:95+0',
  'next:95-0',
  'next:4-5',
  'next:95',
  'word:014',
  'word:fourteen',
  'word:10000',
  'add:03+4',
  'add:-3+4',
  'add:3-4',
  'sub:9+4',
  'lead:7-10',
  'less:10+7',
  'from:3+7',
  'add:3.5+4',
  'add:3+4 ',
  'add:3+4+5',
  'double:',
  'double:10000',
  'times:3+4',
  'times:3×5',
  'times:3X5',
  'add:3x4',
  '3+4',
  '',
];

describe('parseFactId', () => {
  test.each(FACTS)('%s is a fact and keeps its spelling', (text) => {
    expect(parseFactId(text)).toBe(text);
  });

  test.each(NO_FACTS)('%j is no fact', (text) => {
    expect(parseFactId(text)).toBeNull();
  });

  test('every fact of every rung reads back as itself', () => {
    const facts = RUNGS.flatMap((rung) => (rung.kind === 'facts' ? rung.facts : []));
    expect(facts.map(parseFactId)).toEqual(facts);
  });

  test('no text is read that is not spelled the same again', () => {
    fc.assert(fc.property(fc.string(), (text) => [null, text].includes(parseFactId(text))));
  });
});

describe('constructors', () => {
  test('they spell facts as they are stored', () => {
    expect([
      word(14),
      add(3, 4),
      gap(7, 10),
      lead(7, 10),
      sub(9, 4),
      less(10, 7),
      from(3, 7),
      double(7),
      half(14),
      clock(3, 30),
      clock(12, 5),
      next(95, 5),
      next(100, -1),
      times(3, 5),
    ]).toEqual([
      'word:14',
      'add:3+4',
      'gap:7+10',
      'lead:7+10',
      'sub:9-4',
      'less:10-7',
      'from:3-7',
      'double:7',
      'half:14',
      'clock:0330',
      'clock:1205',
      'next:95+5',
      'next:100-1',
      'times:3x5',
    ]);
  });

  test.each([
    ['a negative difference', () => sub(4, 9)],
    ['a gap larger than its total', () => gap(11, 10)],
    ['a given number larger than its total', () => lead(11, 10)],
    ['more left than there was', () => less(7, 10)],
    ['a negative number taken away', () => from(-3, 7)],
    ['half of an odd number', () => half(7)],
    ['a negative number', () => add(-1, 4)],
    ['a part of a number', () => double(1.5)],
    ['a word for a negative number', () => word(-1)],
    ['a number of five digits', () => word(10_000)],
    ['an hour that is not on the dial', () => clock(13, 0)],
    ['hour nought', () => clock(0, 30)],
    ['minute sixty', () => clock(3, 60)],
    ['a count that stands still', () => next(95, 0)],
    ['a count below nought', () => next(4, -5)],
    ['a negative factor', () => times(-3, 5)],
    ['no number at all', () => times(Number.NaN, 5)],
  ])('%s is refused', (_, make) => {
    expect(make).toThrow(RangeError);
  });
});

describe('parseShape', () => {
  test('a fact comes apart into what the card shows', () => {
    expect(parseShape('next:100-1')).toEqual({ kind: 'next', n: 100, step: -1 });
    expect(parseShape('lead:7+10')).toEqual({ kind: 'lead', b: 7, total: 10 });
    expect(parseShape('less:10-7')).toEqual({ kind: 'less', a: 10, rest: 7 });
    expect(parseShape('from:3-7')).toEqual({ kind: 'from', b: 3, rest: 7 });
    expect(parseShape('times:3x5')).toEqual({ kind: 'times', a: 3, b: 5 });
    expect(parseShape('word:14')).toEqual({ kind: 'word', n: 14 });
  });
});
