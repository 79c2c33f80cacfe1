import type { RungId } from '../ladder/rung.ts';
import type { DrillPart } from './drill.ts';
import { rungsInPart } from './plan-part.ts';

/**
 * How many answers a part asks for: its cards, or the numbers of its run.
 *
 * @example
 * askedOf(part); // 4 for the run 35, 40, 45, 50
 */
export function askedOf(part: DrillPart): number {
  return part.kind === 'facts' ? part.cards.length : part.length;
}

/**
 * What a part is made from, the same in whatever order its rungs are named.
 *
 * @example
 * mixKey({ rung: 'halves.to10', also: ['doubles.to10'] }); // 'doubles.to10+halves.to10'
 */
export function mixKey(part: { readonly rung: RungId; readonly also?: readonly RungId[] }): string {
  return rungsInPart(part).toSorted().join('+');
}

/**
 * The key under which a child's own best is kept. Scores compare only on the same rung and the same number asked;
 * where a run starts makes no difference. A mixed part compares only with the same mixture, never with its rungs kept apart.
 *
 * @example
 * blueprintOf(part); // 'counting.fives|10' for a run of ten numbers in fives
 */
export function blueprintOf(part: DrillPart): string {
  return `${mixKey(part)}|${askedOf(part)}`;
}
