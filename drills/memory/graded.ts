import { GRADED_PARAMETERS, type GradedParameters } from './graded-parameters.ts';
import { type GradedTables, gradedTables, LONGEST_GAP } from './graded-tables.ts';
import type { Evidence, MemoryModel, MemoryState } from './model.ts';

/** Stands for the day of practice of a fact that was never asked. */
const NEVER = -1;
const DIFFICULTIES = [0, 1, 2, 3, 4, 5];

/**
 * A model that takes a fact to sit at one of a few grades and holds a chance for each. State: the day last asked (-1 for
 * never), then the chances of the grades, weakest first. It is a hidden Markov model: an answer weighs each grade by how
 * likely it made that answer (Bayes, with room for marks that are wrong), and the practice then lifts part of each grade to the
 * next. What a relative lends weighs with its share as exponent and lifts nothing. A day that goes back counts as the last day.
 *
 * `worth` is how much nearer to known, nine right in ten on the day after, asking brings the fact. So facts about to become
 * known come first, those that slip away next, and those that are firm or far off last.
 */
export function createGradedModel(parameters: GradedParameters): MemoryModel {
  const tables = gradedTables(parameters);
  const starts = DIFFICULTIES.map((difficulty) => startState(parameters, difficulty));
  const hardest = startState(parameters, Math.max(...DIFFICULTIES));
  const gapAt = (state: MemoryState, day: number) => {
    const last = state[0] ?? NEVER;
    if (last === NEVER) return parameters.longAgo;
    const gap = day - last;
    return gap <= 0 ? 0 : Math.min(gap, LONGEST_GAP);
  };
  return {
    name: 'graded',
    start: (difficulty) => starts[difficulty] ?? hardest,
    learn: (state, evidence) =>
      learn(state, evidence, gapAt(state, evidence.day), tables, parameters),
    recall: (state, day) => expected(tables.recall, state, gapAt(state, day)),
    worth: (state, day) => expected(tables.worth, state, gapAt(state, day)),
  };
}

/**
 * The graded model with the values in use.
 *
 * @example
 * graded.recall(graded.learn(graded.start(2), { day: 20, right: true, way: 'card', share: 1 }), 21); // 0.86
 */
export const graded: MemoryModel = createGradedModel(GRADED_PARAMETERS);

function startState(parameters: GradedParameters, difficulty: number): MemoryState {
  const { dayAfter, startGrade, startStep, startSpread } = parameters;
  const middle = startGrade - startStep * difficulty;
  const heights = dayAfter.map((_, grade) =>
    Math.exp(-0.5 * ((grade - middle) / startSpread) ** 2),
  );
  const total = heights.reduce((sum, height) => sum + height, 0);
  return [NEVER, ...heights.map((height) => height / total)];
}

function learn(
  state: MemoryState,
  evidence: Evidence,
  gap: number,
  tables: GradedTables,
  parameters: GradedParameters,
): MemoryState {
  const own = evidence.share >= 1;
  const last = state[0] ?? NEVER;
  const weighed = weigh(state, evidence, gap, tables, parameters);
  const doubt = parameters.doubt * evidence.share;
  const even = doubt / weighed.length;
  const next = [own ? Math.max(last, evidence.day) : last];
  let lifted = 0;
  for (let grade = 0; grade < weighed.length; grade += 1) {
    const chance = weighed[grade] ?? 0;
    const lift = own ? chance * (tables.climb[gap * weighed.length + grade] ?? 0) : 0;
    next.push((1 - doubt) * (chance - lift + lifted) + even);
    lifted = lift;
  }
  return next;
}

/** The chances of the grades after one answer and before the practice it was: Bayes' rule. */
function weigh(
  state: MemoryState,
  { right, way, share }: Evidence,
  gap: number,
  { recall }: GradedTables,
  { overlooked, misread }: GradedParameters,
): number[] {
  const how = way === 'unmissed' ? 'tapped' : 'alone';
  const missed = overlooked[how];
  const certain = 1 - misread[how] - missed;
  const grades = state.length - 1;
  const weighed: number[] = [];
  let total = 0;
  for (let grade = 0; grade < grades; grade += 1) {
    const markedRight = missed + certain * (recall[gap * grades + grade] ?? 0);
    const likelihood = right ? markedRight : 1 - markedRight;
    const weight = (state[grade + 1] ?? 0) * (share >= 1 ? likelihood : likelihood ** share);
    weighed.push(weight);
    total += weight;
  }
  for (let grade = 0; grade < grades; grade += 1) weighed[grade] = (weighed[grade] ?? 0) / total;
  return weighed;
}

function expected(table: Float64Array, state: MemoryState, gap: number): number {
  const grades = state.length - 1;
  const first = gap * grades;
  let sum = 0;
  for (let grade = 0; grade < grades; grade += 1) {
    sum += (state[grade + 1] ?? 0) * (table[first + grade] ?? 0);
  }
  return sum;
}
