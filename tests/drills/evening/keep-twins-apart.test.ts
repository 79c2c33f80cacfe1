import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keepTwinsApart } from '../../../drills/evening/keep-twins-apart.ts';
import { add, type FactId, isNearTwin } from '../../../drills/index.ts';

function touching(facts: readonly FactId[]): number {
  return facts.filter((fact, at) => {
    const before = facts[at - 1];
    return before !== undefined && isNearTwin(before, fact);
  }).length;
}

describe('keepTwinsApart', () => {
  test('a card is moved between two twins', () => {
    expect(keepTwinsApart(['add:3+4', 'add:4+3', 'add:1+1'])).toEqual([
      'add:3+4',
      'add:1+1',
      'add:4+3',
    ]);
  });

  test('an order without touching twins is left as it is', () => {
    const order: FactId[] = ['add:3+4', 'add:1+1', 'add:4+3', 'add:2+2', 'add:5+0'];
    expect(keepTwinsApart(order)).toEqual(order);
  });

  test('twins that only come last are still parted', () => {
    const order: FactId[] = ['add:1+1', 'add:2+2', 'add:3+4', 'add:4+3'];
    expect(touching(order)).toBe(1);
    expect(touching(keepTwinsApart(order))).toBe(0);
  });

  test('two twins alone stay together, and nothing is lost', () => {
    expect(keepTwinsApart(['add:3+4', 'add:4+3'])).toEqual(['add:3+4', 'add:4+3']);
    expect(keepTwinsApart([])).toEqual([]);
  });

  test('a family of more than two is parted wherever it fills no more than every other place', () => {
    const family: FactId[] = ['add:3+4', 'add:4+3', 'sub:7-3', 'sub:7-4', 'gap:3+7'];
    const others: FactId[] = ['add:1+1', 'add:2+2', 'double:5', 'half:20'];
    expect(touching(keepTwinsApart([...family, ...others]))).toBe(0);
  });

  test('any three or more distinct sums can be told apart, and the same sums come out', () => {
    const sums = fc.uniqueArray(
      fc.tuple(fc.nat(3), fc.nat(3)).map(([a, b]) => add(a, b)),
      { minLength: 3, maxLength: 16 },
    );
    fc.assert(
      fc.property(sums, (facts) => {
        const apart = keepTwinsApart(facts);
        expect(touching(apart)).toBe(0);
        expect([...apart].sort()).toEqual([...facts].sort());
      }),
      { numRuns: 500 },
    );
  });
});
