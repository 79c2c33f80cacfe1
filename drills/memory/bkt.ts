import type { MemoryModel } from './model.ts';

/**
 * The probabilities of knowledge tracing. `learn` (T): learned by one more practice. `slip` (s): wrong although known.
 * `guess` (g): right although not known. The fourth, L0, known before the first answer, is the belief one begins with.
 */
export interface TraceParams {
  readonly learn: number;
  readonly slip: number;
  readonly guess: number;
}

/**
 * One step of Bayesian knowledge tracing: the chance that a skill is known, after one answer and the practice it was.
 *
 *     right: P = p (1 - s) / (p (1 - s) + (1 - p) g)
 *     wrong: P = p s / (p s + (1 - p) (1 - g))
 *     p' = P + (1 - P) T
 *
 * Source: Corbett and Anderson, "Knowledge tracing: modeling the acquisition of procedural knowledge", User Modeling and
 * User-Adapted Interaction 4 (1995), 253-278. `p` is 0 to 1. An answer that is impossible under the parameters (wrong, with
 * p = 1 and no slips) counts as practice alone.
 *
 * @example
 * traceStep(0.2, true, { learn: 0.1, slip: 0.1, guess: 0.2 }); // 0.576471
 */
export function traceStep(p: number, right: boolean, params: TraceParams): number {
  const { learn, slip, guess } = params;
  const ifKnown = p * (right ? 1 - slip : slip);
  const ifNot = (1 - p) * (right ? guess : 1 - guess);
  const likelihood = ifKnown + ifNot;
  const posterior = likelihood > 0 ? ifKnown / likelihood : p;
  return posterior + (1 - posterior) * learn;
}

// Ours, without a source: an answer of one's own is seldom guessed, and an easy fact is often known from school.
const SETTLED: TraceParams = { learn: 0.2, slip: 0.1, guess: 0.1 };
const KNOWN_BY_DIFFICULTY = [0.6, 0.5, 0.4, 0.3, 0.25, 0.2];

/** The share of missed cards a helper overlooks who taps the missed ones only. Ours, without a source. */
const OVERLOOKED = 0.05;

// An overlooked miss passes for right, whether or not the fact is known; a miss that was tapped says as much as ever.
const UNMISSED: TraceParams = {
  learn: SETTLED.learn,
  slip: SETTLED.slip * (1 - OVERLOOKED),
  guess: SETTLED.guess + (1 - SETTLED.guess) * OVERLOOKED,
};

/**
 * Knowledge tracing as a model of one fact. State: the chance that it is known. There is no forgetting in it, so days play no
 * part; a relative's answer moves the belief by its share of the way that an answer of the fact's own would. `worth` is the
 * chance that it is not known yet.
 *
 * @example
 * bkt.recall(bkt.start(2), 20); // 0.42 = 0.4 (1 - 0.1) + 0.6 x 0.1
 */
export const bkt: MemoryModel = {
  name: 'bkt',

  start: (difficulty) => [KNOWN_BY_DIFFICULTY[difficulty] ?? 0.2],

  learn([p = 0], { right, way, share }) {
    const after = traceStep(p, right, way === 'unmissed' ? UNMISSED : SETTLED);
    return [p + share * (after - p)];
  },

  recall: ([p = 0]) => p * (1 - SETTLED.slip) + (1 - p) * SETTLED.guess,

  worth: ([p = 0]) => 1 - p,
};
