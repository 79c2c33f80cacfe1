import { expect, it } from 'vitest';
import {
  add,
  clock,
  double,
  from,
  gap,
  hasNought,
  lead,
  less,
  next,
  sub,
  times,
  word,
} from '../../../drills/index.ts';

it('a fact with a nought among its numbers has a nought', () => {
  const facts = [
    add(7, 0),
    add(0, 7),
    sub(7, 0),
    sub(7, 7),
    gap(0, 7),
    gap(7, 7),
    lead(0, 7),
    lead(7, 7),
    less(7, 0),
    less(7, 7),
    from(0, 7),
    from(7, 0),
  ];
  for (const fact of facts) expect(hasNought(fact), fact).toBe(true);
  expect(hasNought('sub:7-7')).toBe(true);
});

it('ten, a double, a clock, a word, a step of a count and a product have none', () => {
  const facts = [
    add(4, 6),
    sub(10, 3),
    gap(3, 10),
    lead(3, 10),
    less(10, 3),
    from(3, 7),
    double(5),
    clock(10, 0),
    word(0),
    next(0, 10),
    times(0, 5),
  ];
  for (const fact of facts) expect(hasNought(fact), fact).toBe(false);
});
