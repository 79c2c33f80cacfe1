import { describe, expect, test } from 'vitest';
import { add, clock, double, gap, half, parseFactId, RUNGS, sub } from '../../../drills/index.ts';

describe('parseFactId', () => {
  test.each([
    ['add:3+4'],
    ['add:0+0'],
    ['gap:7+10'],
    ['gap:10+10'],
    ['sub:9-4'],
    ['sub:4-4'],
    ['double:7'],
    ['half:14'],
    ['half:0'],
    ['clock:0330'],
    ['clock:1259'],
    ['add:9999+1'],
  ])('%s is a fact and keeps its spelling', (text) => {
    expect(parseFactId(text)).toBe(text);
  });

  test.each([
    ['sub:4-9'],
    ['gap:11+10'],
    ['half:7'],
    ['clock:0030'],
    ['clock:1300'],
    ['clock:0360'],
    ['clock:330'],
    ['add:03+4'],
    ['add:-3+4'],
    ['add:3-4'],
    ['sub:9+4'],
    ['add:3.5+4'],
    ['add:3+4 '],
    ['add:3+4+5'],
    ['double:'],
    ['double:10000'],
    ['times:3+4'],
    ['3+4'],
    [''],
  ])('%j is no fact', (text) => {
    expect(parseFactId(text)).toBeNull();
  });

  test('every fact of every rung reads back as itself', () => {
    const facts = RUNGS.flatMap((rung) => (rung.kind === 'facts' ? rung.facts : []));
    expect(facts.map(parseFactId)).toEqual(facts);
  });
});

describe('constructors', () => {
  test('they spell facts as they are stored', () => {
    expect([
      add(3, 4),
      gap(7, 10),
      sub(9, 4),
      double(7),
      half(14),
      clock(3, 30),
      clock(12, 5),
    ]).toEqual([
      'add:3+4',
      'gap:7+10',
      'sub:9-4',
      'double:7',
      'half:14',
      'clock:0330',
      'clock:1205',
    ]);
  });

  test.each([
    ['a negative difference', () => sub(4, 9)],
    ['a gap larger than its total', () => gap(11, 10)],
    ['half of an odd number', () => half(7)],
    ['a negative number', () => add(-1, 4)],
    ['a part of a number', () => double(1.5)],
    ['an hour that is not on the dial', () => clock(13, 0)],
    ['hour nought', () => clock(0, 30)],
    ['minute sixty', () => clock(3, 60)],
  ])('%s is refused', (_, make) => {
    expect(make).toThrow(RangeError);
  });
});
