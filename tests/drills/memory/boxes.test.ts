import { describe, expect, test } from 'vitest';
import { BOX_GAPS, boxes } from '../../../drills/memory/boxes.ts';
import type { Evidence, MemoryState } from '../../../drills/memory/model.ts';

const RIGHT: Evidence = { day: 20, right: true, way: 'card', share: 1 };
const WRONG: Evidence = { ...RIGHT, right: false };

/** Box and last day after the same answer on each of the days. */
function answered(state: MemoryState, answer: Evidence, ...days: number[]): MemoryState {
  return days.reduce((known, day) => boxes.learn(known, { ...answer, day }), state);
}

describe('five boxes', () => {
  test('a first right answer leads to the second box, a first wrong one to the first', () => {
    expect(boxes.learn(boxes.start(2), RIGHT)).toEqual([2, 20, 2]);
    expect(boxes.learn(boxes.start(2), WRONG)).toEqual([1, 20, 2]);
  });

  test('right answers on later days move a card up to the fifth box and no further', () => {
    const ups = [20, 22, 26, 34, 50, 66].map((_, index, days) =>
      answered(boxes.start(0), RIGHT, ...days.slice(0, index + 1)),
    );
    expect(ups.map(([box]) => box)).toEqual([2, 3, 4, 5, 5, 5]);
  });

  test('a wrong answer leads back to the first box from any box', () => {
    const top = answered(boxes.start(0), RIGHT, 20, 22, 26, 34);
    expect(answered(top, WRONG, 50)).toEqual([1, 50, 0]);
  });

  test('a second right answer on the same day does not move a card up again', () => {
    expect(answered(boxes.start(2), RIGHT, 20, 20)).toEqual([2, 20, 2]);
    expect(answered(answered(boxes.start(2), WRONG, 20), RIGHT, 20)).toEqual([1, 20, 2]);
  });

  test('a late mark for an earlier day neither moves a card up nor the day back', () => {
    expect(answered(boxes.start(2), RIGHT, 20, 18)).toEqual([2, 20, 2]);
    expect(answered(answered(boxes.start(2), RIGHT, 20), WRONG, 18)).toEqual([1, 20, 2]);
  });

  test('what a relative lends moves no card', () => {
    const known = answered(boxes.start(2), RIGHT, 20);
    expect(boxes.learn(known, { ...WRONG, share: 0.9 })).toEqual(known);
    expect(boxes.learn(boxes.start(4), { ...RIGHT, share: 0.7 })).toEqual(boxes.start(4));
  });

  test('each box waits twice as long, and a card is worth 1 on the day it is due', () => {
    expect(BOX_GAPS).toEqual([1, 2, 4, 8, 16]);
    for (const [index, gap] of BOX_GAPS.entries()) {
      const state = [index + 1, 20, 2];
      expect(boxes.worth(state, 20)).toBe(0);
      expect(boxes.worth(state, 20 + gap)).toBe(1);
      expect(boxes.worth(state, 20 + 2 * gap)).toBe(2);
    }
  });

  test('a higher box recalls better on the same day, and an easier new fact better than a hard one', () => {
    const byBox = [1, 2, 3, 4, 5].map((box) => boxes.recall([box, 20, 2], 24));
    expect(byBox).toEqual(byBox.toSorted((one, other) => one - other));
    const byDifficulty = [5, 4, 3, 2, 1, 0].map((hard) => boxes.recall(boxes.start(hard), 24));
    expect(byDifficulty).toEqual([0.25, 0.3, 0.35, 0.45, 0.55, 0.65]);
  });

  test('eight gaps of its box halve what is recalled', () => {
    expect(boxes.recall([3, 20, 2], 20)).toBeCloseTo(0.92, 12);
    expect(boxes.recall([3, 20, 2], 20 + 8 * 4)).toBeCloseTo(0.46, 12);
  });
});
