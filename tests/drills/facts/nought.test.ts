import { expect, it } from 'vitest';
import { add, clock, double, gap, hasNought, sub } from '../../../drills/index.ts';

it('a fact with a nought among its numbers has a nought', () => {
  for (const fact of [add(7, 0), add(0, 7), sub(7, 0), sub(7, 7), gap(0, 7), gap(7, 7)]) {
    expect(hasNought(fact), fact).toBe(true);
  }
  expect(hasNought('sub:7-7')).toBe(true);
});

it('ten, a double and a clock have none', () => {
  for (const fact of [add(4, 6), sub(10, 3), gap(3, 10), double(5), clock(10, 0)]) {
    expect(hasNought(fact), fact).toBe(false);
  }
});
