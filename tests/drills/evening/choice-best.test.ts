import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestOf } from '../../../drills/evening/choice-best.ts';

test('the highest come, highest first', () => {
  expect(bestOf([0, 1, 2], new Float64Array([5, 9, 7]), 2)).toEqual([1, 2]);
});

test('fewer candidates than wanted all come', () => {
  expect(bestOf([2, 0], new Float64Array([5, 9, 7]), 5)).toEqual([2, 0]);
});

test('none is wanted, none comes', () => {
  expect(bestOf([0, 1], new Float64Array([5, 9]), 0)).toEqual([]);
});

test('of equal ones the earlier candidate wins', () => {
  expect(bestOf([2, 0, 1], new Float64Array([7, 7, 7]), 2)).toEqual([2, 0]);
});

test('it is what sorting everything would give', () => {
  const anyKeys = fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 40 });
  fc.assert(
    fc.property(anyKeys, fc.nat(45), (numbers, count) => {
      const keys = Float64Array.from(numbers);
      const candidates = numbers.map((_, at) => at);
      const sorted = candidates.toSorted((one, other) => (keys[other] ?? 0) - (keys[one] ?? 0));
      expect(bestOf(candidates, keys, count)).toEqual(sorted.slice(0, count));
    }),
  );
});
