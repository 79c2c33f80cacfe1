/**
 * What the graded model supposes. A grade is how firmly a fact sits; grades go from 0, the weakest, up.
 *
 * `dayAfter` is each grade's chance of a right answer one day after practice. `forgetting` is the power of time by which the
 * odds fall. `climb` is each grade's chance that one practice lifts a fact to the next grade; `massing` is how much of it is lost
 * while the fact is still surely recalled. Before anything is seen, grades are spread like a bell around `startGrade` less
 * `startStep` for each step of difficulty, `startSpread` wide, as if last practised `longAgo` days ago. `overlooked` and
 * `misread` are how often a wrong answer is marked right and a right one wrong: on a card marked by itself, and where only
 * missed cards are tapped. `doubt` is the share of belief spread over all grades anew with each answer, so that no belief ever
 * becomes too firm to change.
 */
export interface GradedParameters {
  readonly dayAfter: readonly number[];
  readonly forgetting: number;
  readonly climb: readonly number[];
  readonly massing: number;
  readonly startGrade: number;
  readonly startStep: number;
  readonly startSpread: number;
  readonly longAgo: number;
  readonly overlooked: { readonly alone: number; readonly tapped: number };
  readonly misread: { readonly alone: number; readonly tapped: number };
  readonly doubt: number;
}

/**
 * The values in use. No public record of children's answers fact by fact was found, so all but the last three were fitted by
 * likelihood to the simulated children of the learning bench, then moved a little to where those learned most, on tuning seeds
 * only, and rounded; the last three are our guess. The steps of `dayAfter` are ours: closest together around 0.9, where a fact
 * begins to count as known. Stored states mean something under these values only: whoever changes them gives the model another
 * name, so that memory is folded anew.
 */
export const GRADED_PARAMETERS: GradedParameters = {
  dayAfter: [0.15, 0.45, 0.7, 0.85, 0.92, 0.97],
  forgetting: 0.22,
  climb: [0.6, 0.5, 0.55, 0.45, 0.35, 0],
  massing: 0.35,
  startGrade: 4.6,
  startStep: 0.9,
  startSpread: 1.75,
  longAgo: 90,
  overlooked: { alone: 0.02, tapped: 0.03 },
  misread: { alone: 0.02, tapped: 0.03 },
  doubt: 0.001,
};
