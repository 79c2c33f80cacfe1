import type { RunRung } from './rung.ts';

/** Fewer numbers than this cannot stand on both sides of a hundred and touch it. */
const FEWEST_TO_CROSS = 3;

const STARTS = new WeakMap<RunRung, Map<number, readonly number[]>>();

/**
 * How many numbers the longest run of a rung has, so that all of them lie between 0 and the limit.
 *
 * @example
 * longestRun(rung); // 11 for counting.tens100: 0, 10, 20, ... 100
 */
export function longestRun({ step, limit, starts }: RunRung): number {
  return starts === 'multiples' ? Math.floor(limit / step) + 1 : Math.floor((limit - 1) / step) + 1;
}

/**
 * Every number that a run of `length` numbers can start from, smallest first. All its numbers lie between 0 and the limit,
 * both included; nought is a multiple of every step. Counting back it starts at its largest number.
 *
 * A rung that crosses hundreds has a number below and a number above one of them. That takes three numbers; a shorter run may
 * start anywhere. Empty only when the run is longer than {@link longestRun}. Throws RangeError unless `length` is a whole
 * number from 1 up. The list is made once for each rung and length.
 *
 * @example
 * runStarts(rung, 10); // [0, 10] for counting.tens100
 */
export function runStarts(rung: RunRung, length: number): readonly number[] {
  if (!Number.isInteger(length) || length < 1) {
    throw new RangeError(`a run of ${length} numbers: give a whole number from 1 up`);
  }
  const known = STARTS.get(rung) ?? new Map<number, readonly number[]>();
  STARTS.set(rung, known);
  const starts = known.get(length) ?? findStarts(rung, length);
  known.set(length, starts);
  return starts;
}

function findStarts(rung: RunRung, length: number): readonly number[] {
  const { step, limit, direction } = rung;
  const span = (length - 1) * step;
  const lowest = Array.from({ length: Math.max(0, limit - span + 1) }, (_, low) => low);
  return lowest
    .filter((low) => (low % step === 0) === (rung.starts === 'multiples'))
    .filter((low) => length < FEWEST_TO_CROSS || crossesOne(rung, low, low + span))
    .map((low) => (direction === 'on' ? low : low + span));
}

function crossesOne({ crosses }: RunRung, low: number, high: number): boolean {
  if (crosses === undefined) return true;
  return (Math.floor(low / crosses) + 1) * crosses < high;
}
