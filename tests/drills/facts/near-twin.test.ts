import { describe, expect, test } from 'vitest';
import { familyOf } from '../../../drills/facts/near-twin.ts';
import { type FactId, isNearTwin } from '../../../drills/index.ts';

describe('isNearTwin', () => {
  test.each<[FactId, FactId]>([
    ['add:3+4', 'add:4+3'],
    ['sub:7-3', 'sub:7-4'],
    ['gap:3+10', 'gap:7+10'],
    ['gap:3+10', 'lead:3+10'],
    ['lead:3+10', 'sub:10-7'],
    ['less:10-7', 'less:10-3'],
    ['less:10-7', 'from:3-7'],
    ['from:3-7', 'add:7+3'],
    ['add:3+4', 'sub:7-4'],
    ['add:3+4', 'gap:3+7'],
    ['double:7', 'half:14'],
    ['double:4', 'add:4+4'],
    ['times:3x5', 'times:5x3'],
  ])('%s and %s are near twins, whichever comes first', (a, b) => {
    expect(isNearTwin(a, b)).toBe(true);
    expect(isNearTwin(b, a)).toBe(true);
  });

  test.each<[FactId, FactId]>([
    ['add:3+4', 'add:3+4'],
    ['add:3+4', 'add:2+5'],
    ['add:3+4', 'add:3+5'],
    ['sub:7-3', 'sub:8-3'],
    ['gap:3+10', 'gap:4+10'],
    ['lead:3+10', 'lead:3+9'],
    ['less:10-7', 'less:9-7'],
    ['from:3-7', 'from:3-6'],
    ['double:7', 'double:8'],
    ['clock:0300', 'clock:0330'],
    ['clock:0300', 'clock:0300'],
    ['times:3x5', 'times:3x2'],
    ['times:3x5', 'add:3+5'],
    ['word:14', 'word:41'],
    ['next:95+5', 'next:100-5'],
  ])('%s and %s are not', (a, b) => {
    expect(isNearTwin(a, b)).toBe(false);
    expect(isNearTwin(b, a)).toBe(false);
  });
});

describe('familyOf', () => {
  test('it is the two parts, the smaller first', () => {
    expect(familyOf('sub:7-3')).toBe('3&4');
    expect(familyOf('half:14')).toBe('7&7');
    expect(familyOf('times:5x3')).toBe('3x5');
  });

  test.each<[FactId]>([['word:14'], ['clock:0330'], ['next:95+5']])(
    '%s is a family of its own',
    (fact) => {
      expect(familyOf(fact)).toBe(fact);
    },
  );

  test('a text that is no fact is refused', () => {
    expect(() => familyOf('half:7')).toThrow('not a fact: half:7');
  });
});
