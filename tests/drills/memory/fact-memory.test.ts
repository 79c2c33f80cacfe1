import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numberOf } from '../../../drills/calendar/school-day.ts';
import {
  addDays,
  type FactId,
  type Mark,
  rebuildMemory,
  relativesOf,
  remember,
} from '../../../drills/index.ts';
import { bkt } from '../../../drills/memory/bkt.ts';
import { boxes } from '../../../drills/memory/boxes.ts';
import { MODELS } from '../../../drills/memory/models.ts';
import { day } from '../support/day.ts';

const monday = day('2026-09-07');
const tuesday = day('2026-09-08');
const right: Mark = { fact: 'add:3+4', day: monday, right: true, way: 'card' };
const wrong: Mark = { ...right, right: false };

test('the days of memory are counted from 1970-01-01', () => {
  expect(numberOf(day('1970-01-01'))).toBe(0);
  expect(numberOf(day('2026-09-09'))).toBe(20705);
});

describe('remember', () => {
  test('the first right mark begins a streak of one', () => {
    const known = remember(undefined, { ...right, day: day('2026-09-09') }, boxes);
    const state = [2, 20705, 2];
    const lastDay = day('2026-09-09');
    expect(known).toEqual({ asked: 1, right: 1, streak: 1, lastDay, lastRight: true, state });
  });

  test('a miss ends the streak and keeps the count', () => {
    const known = remember(undefined, right);
    expect(remember(known, { ...wrong, day: tuesday })).toMatchObject({
      asked: 2,
      right: 1,
      streak: 0,
      lastDay: tuesday,
      lastRight: false,
    });
  });

  test('a late mark for an earlier day never moves the last day back', () => {
    const known = remember(undefined, { ...right, day: tuesday });
    expect(remember(known, wrong)).toMatchObject({
      lastDay: tuesday,
      lastRight: false,
      streak: 0,
    });
  });

  test('earlier memory is left as it was', () => {
    const known = Object.freeze(remember(undefined, right));
    expect(remember(known, { ...right, day: tuesday }).streak).toBe(2);
    expect(known.asked).toBe(1);
  });
});

const facts: FactId[] = ['add:3+4', 'add:4+3', 'sub:7-3', 'add:7+7', 'double:7', 'next:95+5'];
const anyMarks: fc.Arbitrary<Mark[]> = fc.array(
  fc.record({
    fact: fc.constantFrom(...facts),
    day: fc.nat(30).map((ahead) => addDays(monday, ahead)),
    right: fc.boolean(),
    way: fc.constantFrom('card', 'unmissed', 'run'),
  }),
);

describe('rebuildMemory', () => {
  test('no marks leave no memory', () => {
    expect(rebuildMemory([]).size).toBe(0);
  });

  test('counts, streak and last day agree with the fact’s own marks', () => {
    fc.assert(
      fc.property(anyMarks, (all) => {
        const memory = rebuildMemory(all);
        for (const { fact } of all) expect(memory.has(fact)).toBe(true);
        for (const [fact, known] of memory) {
          const own = all.filter((mark) => mark.fact === fact);
          const lastMiss = own.findLastIndex((mark) => !mark.right);
          expect(known.asked).toBe(own.length);
          expect(known.right).toBe(own.filter((mark) => mark.right).length);
          expect(known.streak).toBe(own.length - 1 - lastMiss);
          expect(known.lastRight).toBe(own.at(-1)?.right ?? false);
          const days = own.map((mark) => mark.day).sort();
          expect(known.lastDay).toBe(days.at(-1) ?? null);
        }
      }),
    );
  });

  test('a fact’s memory follows from its own marks and its relatives’ alone', () => {
    fc.assert(
      fc.property(anyMarks, fc.constantFrom(...MODELS.values()), (all, model) => {
        for (const [fact, known] of rebuildMemory(all, model)) {
          const near = [fact, ...relativesOf(fact).map((each) => each.fact)];
          const some = all.filter((mark) => near.includes(mark.fact));
          expect(rebuildMemory(some, model).get(fact)).toEqual(known);
        }
      }),
    );
  });
});

describe('what relatives lend', () => {
  test('a relative that was never asked has an entry of its own, without a day', () => {
    const turned = rebuildMemory([right], bkt).get('add:4+3');
    expect(turned).toMatchObject({
      asked: 0,
      right: 0,
      streak: 0,
      lastDay: null,
      lastRight: false,
    });
    expect(bkt.recall(turned?.state ?? [], 0)).toBeGreaterThan(bkt.recall(bkt.start(2), 0));
  });

  test('it changes the state of an asked fact, not its counts', () => {
    const alone = rebuildMemory([right], bkt).get('add:3+4');
    const lent = rebuildMemory([right, { ...wrong, fact: 'add:4+3' }], bkt).get('add:3+4');
    expect(lent).toEqual({ ...alone, state: lent?.state });
    expect(lent?.state).not.toEqual(alone?.state);
  });

  test('it goes one hop: a relative of a relative has no entry', () => {
    const near = new Set<FactId>([right.fact, ...relativesOf(right.fact).map(({ fact }) => fact)]);
    const far = [...near].flatMap((fact) => relativesOf(fact).map((each) => each.fact));
    expect(far.filter((fact) => !near.has(fact)).length).toBeGreaterThan(0);
    expect(new Set(rebuildMemory([right]).keys())).toEqual(near);
  });

  test.each([...MODELS.values()])('with $name right lends hope and wrong lends doubt', (model) => {
    const asRight = rebuildMemory([right], model);
    const asWrong = rebuildMemory([wrong], model);
    for (const { fact } of relativesOf(right.fact)) {
      const [hope, doubt] = [asRight, asWrong].map((memory) =>
        model.recall(memory.get(fact)?.state ?? [], 20_705),
      );
      expect(hope).toBeGreaterThanOrEqual(doubt ?? 1);
    }
  });
});
