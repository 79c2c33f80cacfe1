import type { FactId } from '../facts/fact-id.ts';
import { familyOf } from '../facts/near-twin.ts';

/**
 * The same facts with no near twins next to each other, as close to the given order as that allows.
 * Where one family is more than half of the facts this is impossible, and some twins stay together.
 *
 * @example
 * keepTwinsApart(['add:3+4', 'add:4+3', 'add:1+1']); // ['add:3+4', 'add:1+1', 'add:4+3']
 */
export function keepTwinsApart(facts: readonly FactId[]): FactId[] {
  const rest = facts.map((fact) => ({ fact, family: familyOf(fact) }));
  const result: FactId[] = [];
  let last: string | null = null;
  while (rest.length > 0) {
    const families = rest.map(({ family }) => family);
    for (const { fact, family } of rest.splice(nextAt(families, last), 1)) {
      result.push(fact);
      last = family;
    }
  }
  return result;
}

function nextAt(families: readonly string[], last: string | null): number {
  const safe = families.findIndex(
    (family, at) => family !== last && canFinish(families.toSpliced(at, 1)),
  );
  if (safe >= 0) return safe;
  return Math.max(
    0,
    families.findIndex((family) => family !== last),
  );
}

/**
 * Whether the rest can be laid out without equal neighbours: a family may take every other place, which is half of
 * them rounded up. The family just taken needs no stricter rule: it was within this bound with one more.
 */
function canFinish(rest: readonly string[]): boolean {
  const counts = new Map<string, number>();
  for (const family of rest) counts.set(family, (counts.get(family) ?? 0) + 1);
  return [...counts.values()].every((count) => count <= Math.ceil(rest.length / 2));
}
