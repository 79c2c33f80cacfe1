import type { SchoolDay } from '../calendar/school-day.ts';
import { chanceDone, firstDayWith } from './chance-done.ts';
import type { Pace } from './pace.ts';

/** What a child of the class still has to do, and its pace, null while that is too early to say. */
export interface ChildLeft {
  readonly left: number;
  readonly pace: Pace | null;
}

/** When some share of a class will be done: `done` already, or a day; null stands for a day after all that were looked at. */
export type ShareDone = SchoolDay | 'done' | null;

/** When a class will be done with a book. */
export interface ClassFinish {
  readonly half: ShareDone;
  /** Nine of ten. */
  readonly nearlyAll: ShareDone;
  /** How many children it is projected from: those who are done and those whose pace is known. */
  readonly known: number;
}

const HALF = 0.5;
const NEARLY_ALL = 0.9;

/**
 * Projects by which of the school days ahead half of the children, and nearly all, are expected to be done: the first day on
 * which the children's chances of being done come to that share of them (the expected number of a sum of chances). Children
 * whose pace is not known are left out; null when fewer than half of the children are known, or there are none.
 *
 * @example
 * projectClass([{ left: 0, pace: null }, { left: 4, pace: null }], days); // { half: 'done', nearlyAll: 'done', known: 1 }
 */
export function projectClass(
  children: readonly ChildLeft[],
  days: readonly SchoolDay[],
): ClassFinish | null {
  const known = children.filter(({ left, pace }) => left <= 0 || pace !== null);
  if (known.length === 0 || known.length < children.length * HALF) return null;
  const share = (ahead: number) =>
    known.reduce((sum, { left, pace }) => sum + (pace ? chanceDone(pace, left, ahead) : 1), 0) /
    known.length;
  const by = (wanted: number): ShareDone => {
    if (share(0) >= wanted) return 'done';
    const place = firstDayWith(share, wanted, days.length);
    return place === null ? null : (days[place] ?? null);
  };
  return { half: by(HALF), nearlyAll: by(NEARLY_ALL), known: known.length };
}
