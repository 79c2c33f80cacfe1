import { type FactId, next } from '../facts/fact-id.ts';

/** How far a counting run got: `said` of its `length` numbers were said, the start among them. */
export interface RunOutcome {
  readonly start: number;
  readonly step: number;
  readonly length: number;
  readonly said: number;
}

/** What a counting run says of one step of the count. */
export interface StepEvidence {
  readonly fact: FactId;
  readonly right: boolean;
}

/**
 * What a counting run says of its steps, in their order: right for each step that was taken, wrong for the one where the child
 * stopped, nothing of those after it. Saying only the start is stopping at the first step. Where not even the start was said,
 * nothing is known of any step: the run was not begun. (What a stop means is our own reading, no source.)
 *
 * Throws RangeError when `said` is not a whole number from 0 to `length`, or when a step is no fact.
 *
 * @example
 * runEvidence({ start: 35, step: 5, length: 4, said: 2 });
 * // [{ fact: 'next:35+5', right: true }, { fact: 'next:40+5', right: false }]
 */
export function runEvidence({ start, step, length, said }: RunOutcome): StepEvidence[] {
  if (!Number.isInteger(said) || said < 0 || said > length) {
    throw new RangeError(`${said} numbers said: a run of ${length} has 0 to ${length}`);
  }
  const seen = said === 0 ? 0 : Math.min(said, length - 1);
  return runSteps({ start, step, length })
    .slice(0, seen)
    .map((fact, index) => ({ fact, right: index < said - 1 }));
}

/**
 * The steps of a counting run as facts, one less than its numbers.
 *
 * @example
 * runSteps({ start: 3, step: -1, length: 3 }); // ['next:3-1', 'next:2-1']
 */
export function runSteps({ start, step, length }: Omit<RunOutcome, 'said'>): FactId[] {
  return Array.from({ length: Math.max(0, length - 1) }, (_, index) =>
    next(start + index * step, step),
  );
}
