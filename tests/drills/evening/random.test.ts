import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fnv1a } from '../../../drills/evening/fnv1a.ts';
import { createRandom } from '../../../drills/index.ts';

const SEEDS = Array.from({ length: 6000 }, (_, index) => `wren|${index}`);

describe('createRandom', () => {
  test('the numbers of a seed never change, or old evenings could not be rebuilt', () => {
    const random = createRandom('wren|2026-09-07');
    expect([random.int(1000), random.int(1000), random.int(1000)]).toEqual([648, 830, 922]);
  });

  test('seeds that differ in one letter give other numbers', () => {
    const firsts = SEEDS.map((seed) => createRandom(seed).next());
    expect(new Set(firsts).size).toBeGreaterThan(5990);
  });

  test('numbers run from 0 up to but not including 1, and are spread evenly over it', () => {
    const random = createRandom('evenly');
    const tenths = Array.from({ length: 10 }, () => 0);
    for (let draw = 0; draw < 10_000; draw += 1) {
      const value = random.next();
      expect(value >= 0 && value < 1).toBe(true);
      const tenth = Math.floor(value * 10);
      tenths[tenth] = (tenths[tenth] ?? 0) + 1;
    }
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(120);
  });

  test.each([[0], [-1], [2.5], [Number.NaN]])('nothing is chosen from %d', (n) => {
    expect(() => createRandom('x').int(n)).toThrow(RangeError);
  });

  test('a seed may hold any letters', () => {
    expect(createRandom('Zoë|2026').next()).not.toBe(createRandom('Zoe|2026').next());
  });
});

describe('fnv1a', () => {
  test('the hash of a text goes on from the hash of its beginning', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.string(), (start, end) => {
        expect(fnv1a(end, fnv1a(start))).toBe(fnv1a(start + end));
      }),
    );
  });
});

describe('shuffle', () => {
  test('nothing is lost, added or changed in place', () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.array(fc.option(fc.nat(5), { nil: undefined })),
        (seed, items) => {
          const before = [...items];
          const after = createRandom(seed).shuffle(items);
          expect(items).toEqual(before);
          const tally = (all: typeof items) => all.map(String).sort();
          expect(tally(after)).toEqual(tally(items));
        },
      ),
    );
  });

  test('over many seeds every order of three comes about equally often', () => {
    const counts = new Map<string, number>();
    for (const seed of SEEDS) {
      const order = createRandom(seed).shuffle(['a', 'b', 'c']).join('');
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect(counts.size).toBe(6);
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(120);
  });
});
