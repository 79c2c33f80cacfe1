import type { Rung, RungId } from '../ladder/rung.ts';

/**
 * The rung to go on to from `from`: the next by order of its own strand's `ladder`, where easier rungs stand first and every
 * rung after those it needs; rungs that are `practised` already are passed over. Null at the top of the ladder.
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
  return ladder.find(({ id }, at) => at > place && !practised.has(id))?.id ?? null;
}
