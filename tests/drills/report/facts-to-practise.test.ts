import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  double,
  type FactId,
  factsToPractise,
  isNearTwin,
  type Mark,
  next,
  rebuildMemory,
} from '../../../drills/index.ts';
import { FRIDAY, WEEK } from '../support/week.ts';

const MONDAY = WEEK[0] ?? FRIDAY;
const mark = (fact: FactId, right: boolean): Mark => ({ fact, day: MONDAY, right, way: 'card' });
const often = (fact: FactId, right: boolean, times = 6) =>
  Array.from({ length: times }, () => mark(fact, right));
const SUMS = [add(1, 2), add(1, 3), add(1, 4), add(2, 3), add(2, 4), add(2, 5)];

describe('facts to practise face to face', () => {
  test('the least sure come first', () => {
    const facts = factsToPractise(
      rebuildMemory([
        ...often(add(3, 4), true),
        mark(add(6, 8), false),
        ...often(add(5, 8), false),
      ]),
      FRIDAY,
    );
    expect(facts[0]).toBe(add(6, 8));
    expect(facts.at(-1)).toBe(add(3, 4));
  });

  test('one fact of a family is enough', () => {
    const facts = factsToPractise(
      rebuildMemory([mark(add(7, 8), false), mark(add(8, 7), false)]),
      FRIDAY,
    );
    expect(facts).toHaveLength(1);
  });

  test('two steps of a count are enough', () => {
    const steps = [5, 10, 15, 20, 25].map((n) => mark(next(n, 5), false));
    expect(factsToPractise(rebuildMemory(steps), FRIDAY)).toHaveLength(2);
  });

  test('a child that is sure of everything still gets five', () => {
    const memory = rebuildMemory(SUMS.flatMap((fact) => often(fact, true, 12)));
    expect(factsToPractise(memory, FRIDAY)).toHaveLength(5);
  });

  test('a fact that was never asked itself is not on the list, though relatives spoke of it', () => {
    const memory = rebuildMemory([mark(add(3, 4), false)]);
    expect(memory.size).toBeGreaterThan(1);
    expect(factsToPractise(memory, FRIDAY)).toEqual([add(3, 4)]);
  });

  test('there are none without marks, as its docstring says', () => {
    expect(factsToPractise(new Map(), FRIDAY)).toEqual([]);
  });

  test('whatever was marked: ten at most, five when there are as many, never twins', () => {
    const anyFact = fc.oneof(
      fc.tuple(fc.nat(10), fc.nat(10)).map(([a, b]) => add(a, b)),
      fc.integer({ min: 1, max: 10 }).map(double),
    );
    const marks = fc.array(fc.tuple(anyFact, fc.boolean()), { maxLength: 60 });
    fc.assert(
      fc.property(marks, (given) => {
        const facts = factsToPractise(
          rebuildMemory(given.map(([fact, right]) => mark(fact, right))),
          FRIDAY,
        );
        expect(facts.length).toBeLessThanOrEqual(10);
        for (const one of facts) {
          expect(facts.some((other) => isNearTwin(one, other))).toBe(false);
          expect(given.some(([fact]) => fact === one)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});
