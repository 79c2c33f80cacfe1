import { describe, expect, test } from 'vitest';
import { blueprintOf, composeEvening } from '../../../drills/index.ts';
import { BENCH_PLAN, createChildren, KNOWN_FACTS } from './children.ts';
import { measure } from './measure.ts';
import { composeSameForAll } from './same-for-all.ts';

const childAt = createChildren();

describe('the children of the bench', () => {
  test('each knows 100 to 250 facts', () => {
    for (let number = 0; number < 200; number += 1) {
      const { size } = childAt(number).memory;
      expect(size).toBeGreaterThanOrEqual(KNOWN_FACTS.min);
      expect(size).toBeLessThanOrEqual(KNOWN_FACTS.max);
    }
  });

  test('each has a memory of its own', () => {
    const [one, other] = [childAt(1), childAt(2)];
    expect([...one.memory.keys()].sort()).not.toEqual([...other.memory.keys()].sort());
    const own = new Set(one.memory.values());
    expect([...other.memory.values()].filter((known) => own.has(known))).toEqual([]);
  });

  test('the same number is the same child', () => {
    expect(createChildren()(7)).toEqual(childAt(7));
  });

  test('each meets known and new facts, and steps of its runs that it knows', () => {
    const { memory } = childAt(3);
    for (const kind of ['add:', 'sub:', 'next:']) {
      expect([...memory.keys()].some((fact) => fact.startsWith(kind))).toBe(true);
    }
  });
});

describe('what is compared', () => {
  test('the evening that is the same for all has the blueprints of a child’s own', () => {
    const child = childAt(1);
    const blueprints = composeSameForAll(child).parts.map(blueprintOf);
    expect(blueprints).toEqual(composeEvening(child).parts.map(blueprintOf));
    expect(blueprints).toHaveLength(BENCH_PLAN.parts.length);
  });

  test('it is the same for all', () => {
    expect(composeSameForAll(childAt(1))).toEqual(composeSameForAll(childAt(2)));
  });

  test('a small school is composed again until there is something to time, each time with other children', () => {
    const seeds = new Set<string>();
    const { evenings } = measure(30, childAt, (input) => {
      seeds.add(input.seed);
      return { version: 0, parts: composeSameForAll(input).parts };
    });
    expect(seeds.size).toBe(evenings);
    expect(evenings).toBeGreaterThanOrEqual(20_000);
  });
});
