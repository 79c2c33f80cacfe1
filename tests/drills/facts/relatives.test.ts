import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SHARES } from '../../../drills/facts/relatives.ts';
import {
  clock,
  double,
  type FactId,
  next,
  parseFactId,
  RUNGS,
  relativesOf,
  word,
} from '../../../drills/index.ts';

const shareOf = (a: FactId, b: FactId) => relativesOf(a).find(({ fact }) => fact === b)?.share;
const allFacts = [...new Set(RUNGS.flatMap((rung) => (rung.kind === 'facts' ? rung.facts : [])))];

describe('relativesOf', () => {
  test.each<[FactId, FactId, number]>([
    ['add:3+4', 'add:4+3', 0.5],
    ['times:3x5', 'times:5x3', 0.5],
    ['add:6+6', 'double:6', 0.7],
    ['double:7', 'half:14', 0.3],
    ['double:7', 'times:7x2', 0.5],
    ['gap:7+10', 'lead:7+10', 0.5],
    ['gap:7+10', 'sub:10-7', 0.4],
    ['lead:7+10', 'sub:10-7', 0.4],
    ['sub:10-3', 'sub:10-7', 0.2],
    ['less:10-7', 'sub:10-7', 0.3],
    ['from:3-7', 'add:7+3', 0.3],
  ])('%s and %s lend each other %d', (a, b, share) => {
    expect(shareOf(a, b)).toBe(share);
    expect(shareOf(b, a)).toBe(share);
  });

  test.each<[FactId, FactId]>([
    ['add:3+4', 'add:3+5'],
    ['add:3+4', 'sub:7-4'],
    ['sub:10-3', 'sub:9-3'],
    ['gap:7+10', 'gap:3+10'],
    ['double:7', 'double:8'],
    ['times:2x7', 'double:7'],
    ['clock:0300', 'clock:0330'],
  ])('%s and %s lend each other nothing', (a, b) => {
    expect(shareOf(a, b)).toBeUndefined();
    expect(shareOf(b, a)).toBeUndefined();
  });

  test('a product lends to itself turned round', () => {
    expect(relativesOf('times:3x5')).toEqual([{ fact: 'times:5x3', share: 0.5 }]);
  });

  test('a plain sum lends to what its numbers give', () => {
    expect(relativesOf('add:3+4')).toEqual([
      { fact: 'add:4+3', share: SHARES.turned },
      { fact: 'from:4-3', share: SHARES.missingAndPlain },
    ]);
  });

  test('words, clocks and steps of a count have no relatives', () => {
    for (const fact of [word(14), clock(3, 30), next(95, 5)]) expect(relativesOf(fact)).toEqual([]);
  });

  test('a double whose result is out of range has no half', () => {
    const relatives = relativesOf(double(5000)).map(({ fact }) => fact);
    expect(relatives).toEqual(['add:5000+5000', 'times:5000x2']);
  });

  test('a text that is no fact is refused', () => {
    expect(() => relativesOf('gap:11+10')).toThrow('not a fact: gap:11+10');
  });
});

describe('the relatives of any fact on the ladder', () => {
  const holds = (check: (fact: FactId) => void) =>
    fc.assert(fc.property(fc.constantFrom(...allFacts), check), { numRuns: 1000 });

  test('none is the fact itself and none comes twice', () => {
    holds((fact) => {
      const relatives = relativesOf(fact).map((each) => each.fact);
      expect(new Set([fact, ...relatives]).size).toBe(relatives.length + 1);
    });
  });

  test('each lends back what it borrows', () => {
    holds((fact) => {
      for (const relative of relativesOf(fact)) {
        expect(shareOf(relative.fact, fact)).toBe(relative.share);
      }
    });
  });

  test('a share is more than nothing and less than the whole', () => {
    for (const share of Object.values(SHARES)) {
      expect(share).toBeGreaterThan(0);
      expect(share).toBeLessThan(1);
    }
  });

  test('each is a fact', () => {
    holds((fact) => {
      for (const { fact: other } of relativesOf(fact)) expect(parseFactId(other)).toBe(other);
    });
  });
});
