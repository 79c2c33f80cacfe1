import { fsrs as createFsrs, type Grade, Rating } from 'ts-fsrs';
import type { MemoryModel, MemoryState } from './model.ts';

/** No card waits longer: the published intervals outgrow a school year (163 days after the fourth right answer). Ours. */
export const LONGEST_WAIT = 21;

// Only functions of numbers are called below. The library's cards and dates, which may read the clock, are left aside.
const algorithm = createFsrs({ maximum_interval: LONGEST_WAIT, enable_fuzz: false });

/** The chance of a right answer before the first own one, and how far one answer of a relative moves it. Ours, no source. */
const NEW_RECALL = [0.65, 0.55, 0.45, 0.35, 0.3, 0.25];
const LENT_BEFORE = 0.5;

/** State by name. While nothing of the fact's own was seen, `stability` is 0 and `hunch` is all there is. */
interface Trace {
  readonly stability: number;
  readonly difficulty: number;
  /** Day of the last answer; between two days after a relative's answer. */
  readonly day: number;
  readonly hunch: number;
}

const traceOf = ([stability = 0, difficulty = 0, day = 0, hunch = 0]: MemoryState): Trace => ({
  stability,
  difficulty,
  day,
  hunch,
});

const stateOf = ({ stability, difficulty, day, hunch }: Trace): MemoryState => [
  stability,
  difficulty,
  day,
  hunch,
];

/**
 * The free spaced repetition scheduler, version 6, with its published default weights, by the library ts-fsrs. A right answer
 * is its grade Good, a wrong one Again. State: stability S in days, difficulty D (1 to 10), last day, hunch.
 *
 *     recall R(t) = (1 + f t / S)^-w20, f such that R(S) = 0.9
 *     S after right = S (1 + e^w8 (11 - D) S^-w9 (e^(w10 (1 - R)) - 1))
 *     S after wrong = w11 D^-w12 ((S + 1)^w13 - 1) e^(w14 (1 - R)), never above S
 *
 * Source: the algorithm's own description (open-spaced-repetition, "The Algorithm", FSRS-6) and the library's code. It knows
 * of no doubt in marks, so how an answer was seen plays no part; right after a wrong answer the fact counts as shown again.
 * A late mark for an earlier day counts as one of the last day. Ours: a relative moves ln S, D and the day by its share of the
 * way; before the first own answer it moves the hunch. `worth` is 1 when due and grows with lateness.
 *
 * @example
 * fsrs.recall(fsrs.learn(fsrs.start(2), { day: 20, right: true, way: 'card', share: 1 }), 20); // 1
 */
export const fsrs: MemoryModel = {
  name: 'fsrs',

  start: (difficulty) =>
    stateOf({ stability: 0, difficulty: 0, day: 0, hunch: NEW_RECALL[difficulty] ?? 0.25 }),

  learn(state, { day, right, share }) {
    const before = traceOf(state);
    const isNew = before.stability === 0;
    if (isNew && share < 1) {
      const hunch = before.hunch + share * LENT_BEFORE * ((right ? 1 : 0) - before.hunch);
      return stateOf({ ...before, hunch });
    }
    const grade: Grade = right ? Rating.Good : Rating.Again;
    const elapsed = isNew ? 0 : Math.max(0, day - before.day);
    const after = algorithm.next_state(isNew ? null : before, elapsed, grade);
    const reached = { ...before, ...after, day: isNew ? day : Math.max(before.day, day) };
    return stateOf(share < 1 ? between(before, reached, share) : reached);
  },

  recall(state, day) {
    const { stability, day: last, hunch } = traceOf(state);
    if (stability === 0) return hunch;
    return algorithm.forgetting_curve(Math.max(0, day - last), stability);
  },

  worth(state, day) {
    const { stability, day: last } = traceOf(state);
    return stability === 0 ? 1 : Math.max(0, day - last) / fsrsWait(state);
  },
};

/**
 * After how many days a fact is due, 1 to {@link LONGEST_WAIT}: when recall has sunk to 0.9; 0 while it was never asked.
 *
 * @example
 * fsrsWait(fsrs.start(2)); // 0
 */
export function fsrsWait(state: MemoryState): number {
  const { stability } = traceOf(state);
  return stability === 0 ? 0 : algorithm.next_interval(stability, 0);
}

function between(from: Trace, to: Trace, share: number): Trace {
  const mix = (a: number, b: number) => a + share * (b - a);
  return {
    stability: Math.exp(mix(Math.log(from.stability), Math.log(to.stability))),
    difficulty: mix(from.difficulty, to.difficulty),
    day: mix(from.day, to.day),
    hunch: from.hunch,
  };
}
