import { describe, expect, test } from 'vitest';
import { growthOf } from '../../../drills/digest/growth.ts';
import { mannKendall } from '../../../drills/digest/mann-kendall.ts';
import { addDays, type RungId, summariseWeek } from '../../../drills/index.ts';
import { child, FRIDAY, practised, score, unmarked, WEEK } from '../support/week.ts';

/** A child's scores of ten on a rung, one a day, the last on Friday; the week's five stand in the week. */
function scored(rights: readonly number[], rung: RungId = 'halves.to20', asked = 10) {
  const week = rights.slice(-5);
  const earlier = rights.slice(0, -5).map((right, index, all) => ({
    day: addDays(FRIDAY, -4 - all.length + index),
    parts: [score(rung, right, asked)],
  }));
  const evenings = week.map((right, index) =>
    practised(5 - week.length + index, { parts: [score(rung, right, asked)] }),
  );
  return { earlier, evenings };
}

const growth = (rights: readonly number[]) => growthOf(child(1, scored(rights)), 'halves', WEEK);

describe('growth against a child’s own past', () => {
  test('rises when nearly every later evening is better', () => {
    expect(growth([2, 3, 4, 5, 6, 7, 8, 9])).toMatchObject({ trend: 'rising', evenings: 8 });
  });

  test('falls when nearly every later evening is worse', () => {
    expect(growth([9, 8, 7, 6, 5, 4, 3, 2])).toMatchObject({ trend: 'falling', evenings: 8 });
  });

  test('is steady when scores go up and down, and when they stand still at ten of ten', () => {
    expect(growth([7, 9, 6, 8, 9, 7, 8, 7]).trend).toBe('steady');
    expect(growth([10, 10, 10, 10, 10, 10, 10]).trend).toBe('steady');
  });

  test('is steady while the slope points upwards but chance could have done it', () => {
    const weak = growth([5, 7, 6, 9, 5, 8, 6, 9]);
    expect(weak.aWeek).toBeGreaterThan(0);
    expect(weak.trend).toBe('steady');
    expect(growth([9, 6, 8, 5, 9, 6, 7, 5]).trend).toBe('steady');
  });

  test('is not bent by one bad evening', () => {
    expect(growth([3, 4, 5, 6, 7, 0, 8, 9, 10]).trend).toBe('rising');
    expect(growth([8, 8, 8, 8, 8, 8, 8, 0]).trend).toBe('steady');
  });

  test('rises where it reaches ten of ten and stays there', () => {
    expect(growth([5, 6, 7, 8, 10, 10, 10, 10, 10]).trend).toBe('rising');
  });

  test('is steady where one low evening stands before many of ten', () => {
    // The order is no chance (z = 2.07), but most pairs are equal: the slope is level.
    expect(growth([8, 9, 10, 10, 10, 10, 10, 10, 10, 10])).toMatchObject({
      trend: 'steady',
      aWeek: 0,
    });
  });

  test('is said in cards a week', () => {
    // One card of ten a day is seven of ten a week.
    expect(growth([2, 3, 4, 5, 6, 7, 8, 9]).aWeek).toBeCloseTo(0.7, 9);
  });

  test('five evenings are too little to tell and six are not, however they rise', () => {
    expect(growth([1, 3, 5, 7, 9])).toEqual({ trend: 'too_little', evenings: 5, aWeek: null });
    expect(growth([0, 1, 3, 5, 7, 9]).trend).toBe('rising');
  });
});

describe('which evenings are compared', () => {
  test('those of another number of cards or another rung are left out', () => {
    const ten = scored([9, 8, 7, 6, 5, 4, 3]);
    const others = [11, 12, 13, 14].map((ago) => ({
      day: addDays(FRIDAY, -ago),
      parts: [score('halves.to20', 5, 5), score('halves.to10', 10, 10)],
    }));
    const earlier = [...others, ...ten.earlier];
    expect(growthOf(child(1, { ...ten, earlier }), 'halves', WEEK).evenings).toBe(7);
  });

  test('of two rungs practised this week the one with more evenings speaks', () => {
    const few = practised(4, { parts: [score('halves.to10', 1, 10), score('halves.to20', 9, 10)] });
    const { earlier, evenings } = scored([3, 4, 5, 6, 7, 8, 9]);
    const own = child(1, { earlier, evenings: [...evenings.slice(0, 4), few] });
    expect(growthOf(own, 'halves', WEEK)).toMatchObject({ trend: 'rising', evenings: 7 });
  });

  test('those of more than four weeks ago are left out', () => {
    const parts = [score('halves.to20', 1, 10)];
    const at = (ago: number) => ({ day: addDays(FRIDAY, -ago), parts });
    const { evenings } = scored([5, 6, 7]);
    const own = child(1, { evenings, earlier: [at(40), at(28), at(27)] });
    expect(growthOf(own, 'halves', WEEK).evenings).toBe(4);
  });

  test('an evening that was not marked is missing, never a nought', () => {
    const { earlier, evenings } = scored([5, 5, 5, 5, 5, 5, 5]);
    const silent = { ...unmarked(4, 'silent'), parts: [score('halves.to20', 0, 10)] };
    const own = child(1, { earlier, evenings: [...evenings.slice(0, 4), silent] });
    expect(growthOf(own, 'halves', WEEK)).toMatchObject({ trend: 'steady', evenings: 6 });
  });

  test('a strand left alone this week has no growth', () => {
    const { earlier } = scored([1, 2, 3, 4, 5, 6, 7, 8, 9, 9, 9, 9, 9, 9]);
    const own = child(1, { earlier, evenings: [practised(0)] });
    expect(growthOf(own, 'halves', WEEK)).toEqual({
      trend: 'too_little',
      evenings: 0,
      aWeek: null,
    });
  });
});

test('the class counts who rose and who slipped, strand by strand', () => {
  const children = [
    child(1, scored([2, 3, 4, 5, 6, 7, 8])),
    child(2, scored([1, 3, 4, 5, 7, 8, 9])),
    child(3, scored([9, 8, 7, 6, 5, 4, 3])),
    child(4, scored([7, 7, 7, 7, 7, 7, 7])),
  ];
  const { strands, children: lines } = summariseWeek({ days: WEEK, today: FRIDAY, children });
  expect(strands).toMatchObject([{ strand: 'halves', rose: 2, slipped: 1 }]);
  expect(lines.map((line) => line.growth.get('halves')?.trend)).toEqual([
    'rising',
    'rising',
    'falling',
    'steady',
  ]);
});

test('another child’s scores make no difference to a child’s growth', () => {
  const own = child(1, scored([2, 3, 4, 5, 6, 7, 8]));
  const alone = summariseWeek({ days: WEEK, today: FRIDAY, children: [own] });
  const beside = summariseWeek({
    days: WEEK,
    today: FRIDAY,
    children: [own, child(2, scored([10, 10, 10, 10, 10, 10, 10]))],
  });
  expect(beside.children[0]?.growth).toEqual(alone.children[0]?.growth);
});

describe('the test for a trend', () => {
  test('is as its docstring says', () => {
    // 18 pairs rise and 10 are equal; (8 x 7 x 21 - 5 x 4 x 15) / 18 = 48.6667, 17 / 6.976150 = 2.436874.
    const { s, z } = mannKendall([3, 4, 5, 8, 8, 8, 8, 8]);
    expect(s).toBe(18);
    expect(z).toBeCloseTo(2.436874, 5);
  });

  test('finds none in nothing, one value or equal values', () => {
    for (const values of [[], [7], [7, 7, 7, 7]]) {
      expect(mannKendall(values)).toEqual({ s: 0, z: 0 });
    }
  });

  test('turns its sign with the order', () => {
    const values = [6, 7, 2, 9, 10, 8, 11];
    const { s, z } = mannKendall(values);
    expect(mannKendall(values.toReversed())).toEqual({ s: -s, z: -z });
  });
});
