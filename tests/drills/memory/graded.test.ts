import { describe, expect, test } from 'vitest';
import { createGradedModel, graded } from '../../../drills/memory/graded.ts';
import { GRADED_PARAMETERS } from '../../../drills/memory/graded-parameters.ts';
import type { Evidence, MemoryState } from '../../../drills/memory/model.ts';

const MONDAY = 20_700;

function seen(day: number, right: boolean, rest: Partial<Evidence> = {}): Evidence {
  return { day, right, way: 'card', share: 1, ...rest };
}

function learned(...marks: readonly Evidence[]): MemoryState {
  return marks.reduce(graded.learn, graded.start(2));
}

/** The chances of the grades, without the day in front. */
function chancesIn(state: MemoryState): readonly number[] {
  return state.slice(1);
}

const total = (numbers: readonly number[]) => numbers.reduce((sum, each) => sum + each, 0);

describe('the graded model', () => {
  test('a first right answer makes one more likely on the day after than a wrong one', () => {
    expect(graded.recall(learned(seen(20, true)), 21)).toBeCloseTo(0.86, 2);
    expect(graded.recall(learned(seen(20, false)), 21)).toBeCloseTo(0.69, 2);
  });

  test('a state is at most eight numbers: the day and the chances of the grades, which make 1', () => {
    const state = learned(seen(MONDAY, true), seen(MONDAY + 1, false), seen(MONDAY + 7, true));
    expect(state.length).toBeLessThanOrEqual(8);
    expect(state[0]).toBe(MONDAY + 7);
    expect(total(chancesIn(state))).toBeCloseTo(1, 9);
  });

  test('one answer of a fact at a known grade gives what Bayes and one practice give by hand', () => {
    const plain = createGradedModel({
      ...GRADED_PARAMETERS,
      dayAfter: [0.2, 0.8],
      climb: [0.5, 0],
      massing: 0,
      overlooked: { alone: 0, tapped: 0 },
      misread: { alone: 0, tapped: 0 },
      doubt: 0,
    });
    const [, weak = 0, firm = 0] = plain.learn([MONDAY, 0.5, 0.5], seen(MONDAY + 1, true));
    // Weighed: 0.2 x 0.5 to 0.8 x 0.5, so 0.2 to 0.8; then half of the weak part climbs.
    expect(weak).toBeCloseTo(0.1, 9);
    expect(firm).toBeCloseTo(0.9, 9);
    expect(plain.recall([MONDAY, 0.5, 0.5], MONDAY + 1)).toBeCloseTo(0.5, 9);
  });

  test('odds fall as the power of the days that is given', () => {
    const firm: MemoryState = [MONDAY, 0, 0, 0, 0, 0, 1];
    const odds = (days: number) => {
      const recall = graded.recall(firm, MONDAY + days);
      return recall / (1 - recall);
    };
    expect(odds(1)).toBeCloseTo(0.97 / 0.03, 6);
    expect(odds(30) / odds(1)).toBeCloseTo(30 ** -GRADED_PARAMETERS.forgetting, 6);
  });

  test('spaced practice lifts more than practice of one evening', () => {
    const massed = learned(seen(MONDAY, true), seen(MONDAY, true), seen(MONDAY, true));
    const spaced = learned(seen(MONDAY, true), seen(MONDAY + 4, true), seen(MONDAY + 8, true));
    expect(graded.recall(spaced, MONDAY + 15)).toBeGreaterThan(graded.recall(massed, MONDAY + 7));
  });

  test('a card marked by itself says more than one among others of which only the missed are tapped', () => {
    const alone = graded.recall(learned(seen(MONDAY, false)), MONDAY + 1);
    const tapped = graded.recall(learned(seen(MONDAY, false, { way: 'unmissed' })), MONDAY + 1);
    expect(alone).toBeLessThan(tapped);
  });

  test('what a relative lends moves belief, but is no practice and no day asked', () => {
    const lent = learned(seen(MONDAY, true, { share: 0.5 }));
    const recall = (state: MemoryState) => graded.recall(state, MONDAY + 1);
    expect(recall(lent)).toBeGreaterThan(recall(graded.start(2)));
    expect(recall(lent)).toBeLessThan(recall(learned(seen(MONDAY, true))));
    expect(lent[0]).toBe(graded.start(2)[0]);
  });

  test('a late mark for an earlier day leaves the last day as it was', () => {
    expect(learned(seen(MONDAY + 3, true), seen(MONDAY, true))[0]).toBe(MONDAY + 3);
  });

  test('after a hundred right answers, five wrong ones are still believed', () => {
    const firm = learned(...Array.from({ length: 100 }, (_, at) => seen(MONDAY + at, true)));
    const shaken = [1, 2, 3, 4, 5].reduce<MemoryState>(
      (state, later) => graded.learn(state, seen(MONDAY + 100 + later, false)),
      firm,
    );
    expect(graded.recall(firm, MONDAY + 106)).toBeGreaterThan(0.95);
    expect(graded.recall(shaken, MONDAY + 106)).toBeLessThan(0.6);
  });
});

describe('what is worth asking', () => {
  const sure: MemoryState = [MONDAY, 0, 0, 0, 0, 0, 1];
  const nearly: MemoryState = [MONDAY, 0, 0, 0, 1, 0, 0];
  const farOff: MemoryState = [MONDAY, 1, 0, 0, 0, 0, 0];

  test('a fact about to become known comes before one that is firm and one that is far off', () => {
    const worth = (state: MemoryState) => graded.worth(state, MONDAY + 1);
    expect(worth(nearly)).toBeGreaterThan(worth(sure));
    expect(worth(nearly)).toBeGreaterThan(worth(farOff));
  });

  test('a known fact grows worth asking as it slips away', () => {
    const worth = [1, 10, 40, 120].map((days) => graded.worth(sure, MONDAY + days));
    expect(worth).toEqual(worth.toSorted((one, other) => one - other));
    expect(worth[0]).toBeLessThan(worth[3] ?? 0);
  });

  test('a difficulty beyond the scale counts as the hardest', () => {
    expect(graded.start(9)).toEqual(graded.start(5));
  });
});
