import type { Rung, RungId } from '../ladder/rung.ts';

/**
 * The rung to go on to from `from`: of its own strand's `ladder` the first that needs it, else the next by order; rungs that
 * are `practised` already are passed over. Null at the top of the ladder.
 *
 * @example
 * nextRung(rung, rungsOf('halves'), new Set()); // 'halves.to20' from the rung halves.to10
 */
export function nextRung(
  from: Rung,
  ladder: readonly Rung[],
  practised: ReadonlySet<RungId>,
): RungId | null {
  const place = ladder.findIndex(({ id }) => id === from.id);
  const open = ladder.filter(({ id }) => !practised.has(id) && id !== from.id);
  const later = open.filter((rung) => ladder.indexOf(rung) > place);
  return (open.find(({ needs }) => needs.includes(from.id)) ?? later.at(0))?.id ?? null;
}
