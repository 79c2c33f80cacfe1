import type { Rung } from './rung.ts';
import { RUNGS, rungsOf } from './rungs.ts';

/**
 * The next easier (-1) or harder (1) rung of the same strand and kind, as `needs` joins them: of several that a rung needs the
 * hardest, of several that need it the easiest, by the ladder's order. Null at either end: rungs of other strands that a first
 * rung needs are other practice, not an easier step of it.
 *
 * @example
 * neighbourRung(rung, -1)?.id; // 'halves.to10' from the rung halves.to20
 */
export function neighbourRung(rung: Rung, direction: -1 | 1): Rung | null {
  const ladder = rungsOf(rung.strand).filter(({ kind }) => kind === rung.kind);
  const found =
    direction < 0
      ? ladder.findLast(({ id }) => rung.needs.includes(id))
      : ladder.find(({ needs }) => needs.includes(rung.id));
  return found ?? null;
}

/**
 * A rung's place in the ladder, from 0. Within a strand easier rungs stand first.
 *
 * @example
 * placeOf(rung); // 0 for words.to20
 */
export function placeOf(rung: Rung): number {
  return RUNGS.indexOf(rung);
}
