import {
  type FactId,
  type FactMemory,
  type Mark,
  rebuildMemory,
  type SchoolDay,
} from '../../../drills/index.ts';

/** The memory of a fact after marks on these days, all right or all missed, without what that lends to relatives. */
export function askedOn(fact: FactId, days: readonly SchoolDay[], right = true): FactMemory {
  const marks = days.map((day): Mark => ({ fact, day, right, way: 'card' }));
  const known = rebuildMemory(marks).get(fact);
  if (known === undefined) throw new Error('give at least one day');
  return known;
}

/** A child's memory in which each of these facts was asked on the same days, all right or all missed. */
export function allAskedOn(
  facts: readonly FactId[],
  days: readonly SchoolDay[],
  right = true,
): Map<FactId, FactMemory> {
  return new Map(facts.map((fact) => [fact, askedOn(fact, days, right)]));
}
