import type { Rung, RungId, Strand } from '../ladder/rung.ts';

/**
 * Rungs in an order to work through them: a rung never before one of these that it needs, easier ones of a strand first, and
 * the strands side by side, each spread evenly from beginning to end. Needs that are not among `rungs` are taken as met.
 *
 * @example
 * orderOfSteps(rungsOf('halves')).map(({ id }) => id); // ['halves.to10', 'halves.to20', 'halves.to40', 'halves.tens']
 */
export function orderOfSteps(rungs: readonly Rung[]): Rung[] {
  const places = placesOf(rungs);
  const waiting = rungs.toSorted(
    (one, other) => (places.get(one.id) ?? 0) - (places.get(other.id) ?? 0),
  );
  const order: Rung[] = [];
  while (waiting.length > 0) {
    const open = new Set(waiting.map(({ id }) => id));
    const ready = waiting.findIndex(({ needs }) => !needs.some((need) => open.has(need)));
    // The ladder has no circles, so there is always one that is ready.
    order.push(...waiting.splice(Math.max(0, ready), 1));
  }
  return order;
}

/** Where each rung would stand if nothing were needed: how far up it is in its own strand's list, between 0 and 1. */
function placesOf(rungs: readonly Rung[]): ReadonlyMap<RungId, number> {
  const strands = new Map<Strand, Rung[]>();
  for (const rung of rungs) strands.set(rung.strand, [...(strands.get(rung.strand) ?? []), rung]);
  return new Map(
    [...strands.values()].flatMap((own) =>
      own.map(({ id }, at) => [id, (at + 0.5) / own.length] as const),
    ),
  );
}
