import type { DrillPart } from './drill.ts';

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
 * The key under which a child's own best is kept. Scores compare only on the same rung and the same number asked;
 * where a run starts makes no difference.
 *
 * @example
 * blueprintOf(part); // 'counting.fives|10' for a run of ten numbers in fives
 */
export function blueprintOf(part: DrillPart): string {
  return `${part.rung}|${askedOf(part)}`;
}
