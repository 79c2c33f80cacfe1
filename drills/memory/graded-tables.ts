import type { GradedParameters } from './graded-parameters.ts';

/** Days beyond this count as this many: half a year is as long as the model looks. */
export const LONGEST_GAP = 180;
const GAPS = LONGEST_GAP + 1;

/** On the day of practice itself, odds are those of a quarter of a day later. Our choice. */
const SAME_DAY = 0.25;

/** The odds of nine right answers in ten: from here on a fact counts as known. */
const KNOWN_ODDS = 9;

/**
 * For each gap of 0 to {@link LONGEST_GAP} days since practice, one number for each grade: gap by gap, so that the numbers of
 * one gap stand together, because they are always asked for together. Worked out once.
 */
export interface GradedTables {
  /** The chance of a right answer. */
  readonly recall: Float64Array;
  /** The chance that practice lifts the fact to the next grade. */
  readonly climb: Float64Array;
  /** How much nearer to known practice brings the fact for the day after. */
  readonly worth: Float64Array;
}

/**
 * Recall is o / (1 + o) with the odds o = o1 t^-f, o1 those of one day after. That odds fall as a power of time follows
 * Wickelgren (1974) and Anderson and Schooler (1991), from memory. How far a fact is known is o^2 / (o^2 + 9^2): a half where
 * nine answers in ten are right, with a soft edge, which is ours.
 */
export function gradedTables(parameters: GradedParameters): GradedTables {
  const { dayAfter, climb, massing } = parameters;
  const places = dayAfter.length * GAPS;
  const tables = {
    recall: new Float64Array(places),
    climb: new Float64Array(places),
    worth: new Float64Array(places),
  };
  dayAfter.forEach((_, grade) => {
    for (let gap = 0; gap < GAPS; gap += 1) {
      const recall = recallAt(parameters, grade, gap);
      const lift = (climb[grade] ?? 0) * (1 - massing * recall);
      const next = Math.min(grade + 1, dayAfter.length - 1);
      const asked =
        lift * knownAt(parameters, next, 1) + (1 - lift) * knownAt(parameters, grade, 1);
      const at = gap * dayAfter.length + grade;
      tables.recall[at] = recall;
      tables.climb[at] = lift;
      tables.worth[at] = asked - knownAt(parameters, grade, gap + 1);
    }
  });
  return tables;
}

function oddsAt({ dayAfter, forgetting }: GradedParameters, grade: number, gap: number): number {
  const first = dayAfter[grade] ?? 0;
  return (first / (1 - first)) * Math.max(SAME_DAY, gap) ** -forgetting;
}

function recallAt(parameters: GradedParameters, grade: number, gap: number): number {
  const odds = oddsAt(parameters, grade, gap);
  return odds / (1 + odds);
}

function knownAt(parameters: GradedParameters, grade: number, gap: number): number {
  const odds = oddsAt(parameters, grade, gap);
  return odds ** 2 / (odds ** 2 + KNOWN_ODDS ** 2);
}
