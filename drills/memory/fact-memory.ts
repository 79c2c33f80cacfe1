import type { SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';

/** What is known about one child and one fact, folded from that child's marks. `streak` counts the latest right marks in a row. */
export interface FactMemory {
  readonly asked: number;
  readonly right: number;
  readonly streak: number;
  readonly lastDay: SchoolDay;
  readonly lastRight: boolean;
}

/** One mark that counts. Where a mark was corrected, only the correction belongs here. */
export interface Mark {
  readonly fact: FactId;
  readonly day: SchoolDay;
  readonly right: boolean;
}

/**
 * Memory of one fact after one more mark. Marks are folded in the order they were given; when an earlier day is
 * marked late, `lastRight` follows the mark and `lastDay` stays at the later day.
 *
 * @example
 * remember(undefined, { day, right: true }); // { asked: 1, right: 1, streak: 1, lastDay: day, lastRight: true }
 */
export function remember(
  before: FactMemory | undefined,
  { day, right }: Pick<Mark, 'day' | 'right'>,
): FactMemory {
  const earlier = before ?? { asked: 0, right: 0, streak: 0, lastDay: day };
  return {
    asked: earlier.asked + 1,
    right: earlier.right + (right ? 1 : 0),
    streak: right ? earlier.streak + 1 : 0,
    lastDay: earlier.lastDay > day ? earlier.lastDay : day,
    lastRight: right,
  };
}

/**
 * One child's whole memory from all marks that count, in the order they were given.
 *
 * @example
 * rebuildMemory([]).size; // 0
 */
export function rebuildMemory(marks: readonly Mark[]): Map<FactId, FactMemory> {
  const memory = new Map<FactId, FactMemory>();
  for (const mark of marks) memory.set(mark.fact, remember(memory.get(mark.fact), mark));
  return memory;
}
