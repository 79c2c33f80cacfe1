import { afterEach, describe, expect, test, vi } from 'vitest';
import { fsrs, fsrsWait, LONGEST_WAIT } from '../../../drills/memory/fsrs.ts';
import type { Evidence, MemoryState } from '../../../drills/memory/model.ts';

const RIGHT: Evidence = { day: 20, right: true, way: 'card', share: 1 };
const WRONG: Evidence = { ...RIGHT, right: false };
const fresh = fsrs.learn(fsrs.start(2), RIGHT);

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('scheduling by stability', () => {
  test('right after an answer of its own a fact is recalled', () => {
    expect(fsrs.recall(fresh, 20)).toBe(1);
    expect(fsrs.recall(fsrs.learn(fsrs.start(2), WRONG), 20)).toBe(1);
  });

  test('a fact never asked has no wait, and its recall is a guess by difficulty alone', () => {
    expect(fsrsWait(fsrs.start(2))).toBe(0);
    expect(fsrs.recall(fsrs.start(2), 20)).toBe(0.45);
    expect(fsrs.recall(fsrs.start(2), 500)).toBe(0.45);
  });

  test('a relative lends a hunch before the first own answer, and the answer replaces it', () => {
    const hunch = fsrs.learn(fsrs.start(2), { ...RIGHT, share: 0.5 });
    expect(fsrs.recall(hunch, 20)).toBeCloseTo(0.45 + 0.25 * 0.55, 12);
    const doubt = fsrs.learn(fsrs.start(2), { ...WRONG, share: 0.5 });
    expect(fsrs.recall(doubt, 20)).toBeCloseTo(0.45 - 0.25 * 0.45, 12);
    expect(fsrs.recall(fsrs.learn(hunch, WRONG), 40)).toBe(
      fsrs.recall(fsrs.learn(fsrs.start(2), WRONG), 40),
    );
  });

  test('the wait grows with right answers on the day a fact is due, up to 21 days', () => {
    const waits: number[] = [];
    let state: MemoryState = fresh;
    for (let day = 20, round = 0; round < 5; round += 1) {
      waits.push(fsrsWait(state));
      day += fsrsWait(state);
      state = fsrs.learn(state, { ...RIGHT, day });
    }
    expect(waits).toEqual([2, 11, 21, 21, 21]);
    expect(LONGEST_WAIT).toBe(21);
  });

  test('a fact is worth 1 when it is due and more when it is late', () => {
    expect(fsrs.worth(fresh, 20)).toBe(0);
    expect(fsrs.worth(fresh, 22)).toBe(1);
    expect(fsrs.worth(fresh, 26)).toBe(3);
    expect(fsrs.worth(fsrs.start(2), 26)).toBe(1);
  });

  test('a late mark for an earlier day counts as one of the last day', () => {
    for (const answer of [RIGHT, WRONG]) {
      const late = fsrs.learn(fresh, { ...answer, day: 3 });
      expect(late).toEqual(fsrs.learn(fresh, { ...answer, day: 20 }));
      expect(late[2]).toBe(20);
    }
  });

  test('the library behind it makes no date and reads no clock', () => {
    const answers = [RIGHT, { ...WRONG, day: 25 }, { ...RIGHT, day: 25 }, { ...RIGHT, day: 40 }];
    const learned = () =>
      answers.reduce<MemoryState>((state, answer) => fsrs.learn(state, answer), fsrs.start(2));
    const state = learned();
    vi.stubGlobal('Date', undefined);
    expect(learned()).toEqual(state);
    expect(fsrs.worth(state, 50)).toBeGreaterThan(0);
    expect(fsrs.recall(state, 50)).toBeLessThan(1);
  });

  test('a relative of a known fact moves it less than its own answer would', () => {
    const own = fsrs.learn(fresh, { ...RIGHT, day: 24 });
    const lent = fsrs.learn(fresh, { ...RIGHT, day: 24, share: 0.3 });
    const at = [fresh, lent, own].map((state) => fsrs.recall(state, 60));
    expect(at).toEqual(at.toSorted((one, other) => one - other));
    expect(new Set(at).size).toBe(3);
  });
});
