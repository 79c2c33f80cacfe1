import type { DrillPart } from './drill.ts';

/** How many answers a part asks for: its cards, or the numbers of its run. */
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
