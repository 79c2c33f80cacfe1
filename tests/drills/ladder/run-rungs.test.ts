import { describe, expect, test } from 'vitest';
import { RUNGS, type RunRung } from '../../../drills/index.ts';

const RUNS = RUNGS.filter((rung): rung is RunRung => rung.kind === 'run');

/** Released ids: what they mean never changes. */
const RELEASED = {
  'counting.tens100': [10, 'on', 100],
  'counting.tens': [10, 'on', 200],
  'counting.fives100': [5, 'on', 100],
  'counting.fives': [5, 'on', 200],
  'counting.twos100': [2, 'on', 100],
  'counting.twos': [2, 'on', 200],
  'counting.onesback20': [1, 'back', 20],
  'counting.onesback100': [1, 'back', 100],
  'counting.onesback': [1, 'back', 200],
};

test.each(Object.entries(RELEASED))('%s keeps its meaning', (id, meaning) => {
  const rung = RUNS.find((each) => each.id === id);
  expect([rung?.step, rung?.direction, rung?.limit]).toEqual(meaning);
  expect([rung?.starts, rung?.crosses]).toEqual(['multiples', undefined]);
});

describe('the runs', () => {
  test('every step goes on and back to 100, 200 and 1000', () => {
    for (const step of [1, 2, 3, 4, 5, 10]) {
      for (const direction of ['on', 'back']) {
        const limits = RUNS.filter(
          (run) =>
            run.step === step &&
            run.direction === direction &&
            run.starts === 'multiples' &&
            run.crosses === undefined &&
            run.limit >= 100,
        ).map(({ limit }) => limit);
        expect(limits, `${step} ${direction}`).toEqual([100, 200, 1000]);
      }
    }
  });

  test('tens also go between the full tens, on and back', () => {
    const off = RUNS.filter(({ starts }) => starts === 'others');
    expect(off.map(({ id }) => id)).toEqual([
      'counting.tensoff100',
      'counting.tensoffback100',
      'counting.tensoff',
      'counting.tensoffback',
      'counting.tensoff1000',
      'counting.tensoffback1000',
    ]);
    expect(new Set(off.map(({ step }) => step))).toEqual(new Set([10]));
  });

  test('ones also go over a hundred, on and back', () => {
    const across = RUNS.filter(({ crosses }) => crosses === 100);
    expect(across.map(({ id }) => id)).toEqual([
      'counting.onesacross',
      'counting.onesbackacross',
      'counting.onesacross1000',
      'counting.onesbackacross1000',
    ]);
    expect(RUNS).toHaveLength(37 + 6 + 4);
  });

  test('a smaller range stands before a larger one', () => {
    const limits = RUNS.map(({ limit }) => limit);
    expect(limits).toEqual(limits.toSorted((a, b) => a - b));
  });

  test('counting back needs counting on, and going over a hundred needs the plain run', () => {
    const needs = new Map(RUNS.map((run) => [run.id, run.needs]));
    expect(needs.get('counting.fivesback')).toEqual(['counting.fives', 'counting.fivesback100']);
    expect(needs.get('counting.onesback100')).toEqual(['counting.ones100', 'counting.onesback20']);
    expect(needs.get('counting.twos100')).toEqual(['counting.ones100']);
    expect(needs.get('counting.onesacross')).toEqual(['counting.ones']);
    expect(needs.get('counting.tensoff100')).toEqual(['counting.tens100']);
  });

  test('a title says step, range and what is special', () => {
    const titles = new Map(RUNS.map(({ id, title }) => [id, title]));
    expect(titles.get('counting.tensoffback1000')).toBe(
      'counting back in tens like 33, 23, 13 within 1000',
    );
    expect(titles.get('counting.onesacross')).toBe('counting in ones across hundreds to 200');
  });
});
