import type { RungId } from '../ladder/rung.ts';
import type { JudgedChild } from './judge-class.ts';

/**
 * The rungs that the class practised this week: all that somebody has marks on, but for those that only children practised whose
 * steps were not the class's (see PartScore). Where everybody had such steps, these are the class's.
 *
 * A rung of one child's own is no step of the class: nothing is proposed for it, and the class has not passed it.
 */
export function classRungs(everyone: readonly JudgedChild[]): ReadonlySet<RungId> {
  const parts = everyone.flatMap((child) => child.parts);
  const shared = parts.filter(({ own }) => own !== true);
  return new Set((shared.length > 0 ? shared : parts).map(({ rung }) => rung));
}

/**
 * Whether a child could have practised a rung of the class this week: not when all it was marked on were steps of its own, none
 * of them this one. Such a child is neither missing there nor not yet.
 */
export function couldPractise({ parts, levels }: JudgedChild, rung: RungId): boolean {
  return levels.has(rung) || parts.length === 0 || parts.some(({ own }) => own !== true);
}
