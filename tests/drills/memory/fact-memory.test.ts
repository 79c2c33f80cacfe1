import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, type FactId, type Mark, rebuildMemory, remember } from '../../../drills/index.ts';
import { day } from '../support/day.ts';

const monday = day('2026-09-07');
const tuesday = day('2026-09-08');

describe('remember', () => {
  test('the first right mark begins a streak of one', () => {
    expect(remember(undefined, { day: monday, right: true })).toEqual({
      asked: 1,
      right: 1,
      streak: 1,
      lastDay: monday,
      lastRight: true,
    });
  });

  test('a miss ends the streak and keeps the count', () => {
    const known = remember(undefined, { day: monday, right: true });
    expect(remember(known, { day: tuesday, right: false })).toEqual({
      asked: 2,
      right: 1,
      streak: 0,
      lastDay: tuesday,
      lastRight: false,
    });
  });

  test('a late mark for an earlier day never moves the last day back', () => {
    const known = remember(undefined, { day: tuesday, right: true });
    expect(remember(known, { day: monday, right: false })).toMatchObject({
      lastDay: tuesday,
      lastRight: false,
      streak: 0,
    });
  });

  test('earlier memory is left as it was', () => {
    const known = Object.freeze(remember(undefined, { day: monday, right: true }));
    expect(remember(known, { day: tuesday, right: true }).streak).toBe(2);
    expect(known.asked).toBe(1);
  });
});

describe('rebuildMemory', () => {
  const facts: FactId[] = ['add:3+4', 'sub:9-4', 'double:7'];
  const marks = fc.array(
    fc.record({
      fact: fc.constantFrom(...facts),
      day: fc.nat(30).map((ahead) => addDays(monday, ahead)),
      right: fc.boolean(),
    }),
  );

  test('no marks leave no memory', () => {
    expect(rebuildMemory([]).size).toBe(0);
  });

  test('memory rebuilt from all marks is memory kept up mark by mark', () => {
    fc.assert(
      fc.property(marks, (all) => {
        const kept = new Map();
        for (const mark of all) kept.set(mark.fact, remember(kept.get(mark.fact), mark));
        expect(rebuildMemory(all)).toEqual(kept);
      }),
    );
  });

  test('counts, streak and last day agree with the marks themselves', () => {
    fc.assert(
      fc.property(marks, (all: Mark[]) => {
        for (const [fact, memory] of rebuildMemory(all)) {
          const own = all.filter((mark) => mark.fact === fact);
          const lastMiss = own.findLastIndex(({ right }) => !right);
          expect(memory.asked).toBe(own.length);
          expect(memory.right).toBe(own.filter(({ right }) => right).length);
          expect(memory.streak).toBe(own.length - 1 - lastMiss);
          expect(memory.lastRight).toBe(own.at(-1)?.right);
          expect(memory.lastDay).toBe(
            own
              .map((mark) => mark.day)
              .sort()
              .at(-1),
          );
        }
      }),
    );
  });
});
