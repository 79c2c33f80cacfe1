import fc from 'fast-check';
import { createEmptyCard, type Grade, Rating, fsrs as scheduler } from 'ts-fsrs';
import { describe, expect, test } from 'vitest';
import { traceStep } from '../../drills/memory/bkt.ts';
import { fsrs, fsrsWait } from '../../drills/memory/fsrs.ts';

// Source: the equations of Corbett and Anderson, User Modeling and User-Adapted Interaction 4 (1995), 253-278. The beliefs
// were worked out from them apart from our code; the parameters of the second case are those of a published exercise.
describe('knowledge tracing against worked sequences', () => {
  const usual = { learn: 0.1, slip: 0.1, guess: 0.2 };

  test.each([
    {
      what: 'a child who wavers',
      known: 0.2,
      params: usual,
      answers: '110100',
      beliefs: [0.576471, 0.873684, 0.517318, 0.845438, 0.465475, 0.18835],
    },
    {
      what: 'a child who recovers',
      known: 0.5,
      params: { learn: 0.4, slip: 0.2, guess: 0.2 },
      answers: '0011101101',
      beliefs: [
        0.52, 0.527869, 0.890355, 0.98208, 0.997275, 0.993514, 0.999022, 0.999853, 0.999648,
        0.999947,
      ],
    },
    {
      what: 'a child who is always right',
      known: 0.3,
      params: usual,
      answers: '1111',
      beliefs: [0.692683, 0.919231, 0.982763, 0.996506],
    },
  ])('$what', ({ known, params, answers, beliefs }) => {
    const traced: number[] = [];
    for (const answer of answers) {
      traced.push(traceStep(traced.at(-1) ?? known, answer === '1', params));
    }
    expect(traced).toHaveLength(beliefs.length);
    for (const [index, belief] of beliefs.entries()) expect(traced[index]).toBeCloseTo(belief, 6);
  });

  // A published study guide prints .490 after the third answer of the first case, about what comes of 1 - s where 1 - g
  // belongs.
  test('the third belief of the first case is not the misprinted one', () => {
    const third = [true, true, false].reduce((p, right) => traceStep(p, right, usual), 0.2);
    expect(third).toBeCloseTo(0.517318, 6);
    expect(third).not.toBeCloseTo(0.49, 2);
  });
});

// Source: the test of FSRS-6 in the library's own repository, open-spaced-repetition/ts-fsrs,
// packages/fsrs/__tests__/FSRS-6.test.ts; the weights there are the library's default ones.
describe('the library against its published vectors', () => {
  const Again: Grade = Rating.Again;
  const Good: Grade = Rating.Good;
  const WEIGHTS = [
    0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835,
    0.0614, 0.2629, 1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
  ];

  test('thirteen answers give the published intervals', () => {
    const uncapped = scheduler({ w: WEIGHTS });
    let now = new Date(Date.UTC(2022, 11, 29, 12, 30));
    let card = createEmptyCard(now);
    const intervals: number[] = [];
    for (const grade of [
      ...[Good, Good, Good, Good, Good, Good],
      ...[Again, Again, Good, Good, Good, Good, Good],
    ] satisfies Grade[]) {
      card = uncapped.next(card, now, grade).card;
      intervals.push(card.scheduled_days);
      now = card.due;
    }
    expect(intervals).toEqual([0, 2, 11, 46, 163, 498, 0, 0, 2, 4, 7, 12, 21]);
  });

  test.each([
    [true, 53.626905],
    [false, 53.335065],
  ])('six answers with gaps end at the published stability, short term %s', (short, stability) => {
    const library = scheduler({ w: WEIGHTS, enable_short_term: short });
    const grades: Grade[] = [Again, Good, Good, Good, Good, Good];
    const gaps = [0, 0, 1, 3, 8, 21];
    let state = library.next_state(null, 0, Again);
    for (const [index, grade] of grades.entries()) {
      if (index > 0) state = library.next_state(state, gaps[index] ?? 0, grade);
    }
    expect(state.stability).toBeCloseTo(stability, 4);
    expect(state.difficulty).toBeCloseTo(6.357487, 4);
  });

  test.each([
    [1, 1.2931, 0.91666972],
    [5, 30, 0.9769337],
    [90, 365, 0.96716606],
    [17, 17, 0.9],
  ])(
    'after %d days at stability %d recall is %d, in the library and in ours',
    (days, s, recall) => {
      expect(scheduler().forgetting_curve(days, s)).toBeCloseTo(recall, 8);
      expect(fsrs.recall([s, 5, 20_000, 0.5], 20_000 + days)).toBeCloseTo(recall, 8);
    },
  );
});

describe('our model against the library', () => {
  test('it keeps the stability and difficulty of the library’s own scheduler', () => {
    const library = scheduler();
    const step = fc.record({ gap: fc.nat(60), right: fc.boolean() });
    fc.assert(
      fc.property(fc.nat(5), fc.array(step, { minLength: 1, maxLength: 15 }), (hard, steps) => {
        let day = 20_000;
        let card = createEmptyCard(atNoon(day));
        let state = fsrs.start(hard);
        for (const { gap, right } of steps) {
          day += gap;
          card = library.next(card, atNoon(day), right ? Rating.Good : Rating.Again).card;
          state = fsrs.learn(state, { day, right, way: 'card', share: 1 });
          expect(state[0]).toBeCloseTo(card.stability, 6);
          expect(state[1]).toBeCloseTo(card.difficulty, 6);
        }
      }),
    );
  });

  test('where the library waits half a year we wait three weeks', () => {
    const known = [2.3, 18, 60, 163, 498].map((stability) => fsrsWait([stability, 5, 20_000, 0.5]));
    expect(known).toEqual([2, 18, 21, 21, 21]);
    expect(scheduler().next_interval(163, 0)).toBe(163);
  });
});

function atNoon(day: number): Date {
  return new Date((day + 0.5) * 86_400_000);
}
