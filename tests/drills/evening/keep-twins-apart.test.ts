import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keepTwinsApart } from '../../../drills/evening/keep-twins-apart.ts';
import { add, type FactId, gap, isNearTwin, sub } from '../../../drills/index.ts';

function touching(facts: readonly FactId[]): number {
  return facts.filter((fact, at) => {
    const before = facts[at - 1];
    return before !== undefined && isNearTwin(before, fact);
  }).length;
}

/** Tries every order, one card after another. */
function canBeParted(rest: readonly FactId[], last?: FactId): boolean {
  if (rest.length === 0) return true;
  return rest.some(
    (fact, at) =>
      (last === undefined || !isNearTwin(last, fact)) && canBeParted(rest.toSpliced(at, 1), fact),
  );
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

  test('the first card stays first wherever the rest can still be parted', () => {
    expect(keepTwinsApart(['add:1+1', 'add:3+4', 'add:4+3', 'add:2+2'])).toEqual([
      'add:1+1',
      'add:3+4',
      'add:2+2',
      'add:4+3',
    ]);
  });

  test('two twins alone stay together, and nothing is lost', () => {
    expect(keepTwinsApart(['add:3+4', 'add:4+3'])).toEqual(['add:3+4', 'add:4+3']);
    expect(keepTwinsApart([])).toEqual([]);
  });

  test('families that the caller has at hand give the same order', () => {
    const order: FactId[] = ['add:1+1', 'add:2+2', 'add:3+4', 'add:4+3'];
    expect(keepTwinsApart(order, ['1&1', '2&2', '3&4', '3&4'])).toEqual(keepTwinsApart(order));
  });

  test('where twins cannot all be parted, as few as possible stay together', () => {
    const family: FactId[] = ['add:3+4', 'add:4+3', 'sub:7-3', 'sub:7-4'];
    expect(touching(keepTwinsApart([...family, 'add:1+1']))).toBe(2);
    expect(touching(keepTwinsApart(['add:1+1', ...family]))).toBe(2);
  });

  test('a family of more than two is parted wherever it fills no more than every other place', () => {
    const family: FactId[] = ['add:3+4', 'add:4+3', 'sub:7-3', 'sub:7-4', 'gap:3+7'];
    const others: FactId[] = ['add:1+1', 'add:2+2', 'double:5', 'half:20'];
    expect(touching(keepTwinsApart([...family, ...others]))).toBe(0);
  });

  test('whenever any order at all keeps twins apart, so does this one', () => {
    const facts = ['3&4', '1&2', '0&5', '0&1'].flatMap((parts) => {
      const [a = 0, b = 0] = parts.split('&').map(Number);
      return [add(a, b), add(b, a), sub(a + b, a), sub(a + b, b), gap(a, a + b), gap(b, a + b)];
    });
    const someFacts = fc.shuffledSubarray(facts, { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(someFacts, (chosen) => {
        expect(touching(keepTwinsApart(chosen)) === 0).toBe(canBeParted(chosen));
      }),
      { numRuns: 500 },
    );
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
