import type { FactId } from '../facts/fact-id.ts';
import { familyOf } from '../facts/near-twin.ts';

/**
 * The same facts with no near twins next to each other, as close to the given order as that allows.
 * Where one family is more than half of the facts this is impossible, and some twins stay together.
 * `families` holds each fact's family (see familyOf) in the same order, for a caller that has them at hand.
 *
 * @example
 * keepTwinsApart(['add:3+4', 'add:4+3', 'add:1+1']); // ['add:3+4', 'add:1+1', 'add:4+3']
 */
export function keepTwinsApart(
  facts: readonly FactId[],
  families: readonly string[] = facts.map(familyOf),
): FactId[] {
  if (areApart(families)) return [...facts];
  const rest = facts.map((fact, at) => ({ fact, family: families[at] ?? familyOf(fact) }));
  const result: FactId[] = [];
  let last: string | null = null;
  while (rest.length > 0) {
    for (const { fact, family } of rest.splice(nextAt(rest, last), 1)) {
      result.push(fact);
      last = family;
    }
  }
  return result;
}

interface Member {
  readonly family: string;
}

function areApart(families: readonly string[]): boolean {
  for (let at = 1; at < families.length; at += 1) {
    if (families[at] === families[at - 1]) return false;
  }
  return true;
}

/**
 * The earliest fact that is no twin of the last one and leaves a rest that can still be parted; where no order parts
 * the rest, the earliest that is no twin.
 */
function nextAt(rest: readonly Member[], last: string | null): number {
  const urgent = urgentFamily(rest);
  const family = urgent === last ? null : urgent;
  const at = rest.findIndex((each) =>
    family === null ? each.family !== last : each.family === family,
  );
  return Math.max(0, at);
}

/**
 * The family that must come now, if there is one. What follows can be laid out without equal neighbours while no family is
 * more than every other place of it, which is half rounded up; a family that already is more than that has to give one.
 * Two families cannot both be.
 */
function urgentFamily(rest: readonly Member[]): string | null {
  const bound = Math.ceil((rest.length - 1) / 2);
  const counts = new Map<string, number>();
  for (const { family } of rest) {
    const count = (counts.get(family) ?? 0) + 1;
    if (count > bound) return family;
    counts.set(family, count);
  }
  return null;
}
