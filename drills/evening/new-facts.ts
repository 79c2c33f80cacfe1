import type { FactId } from '../facts/fact-id.ts';
import type { Rung } from '../ladder/rung.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { Variant } from './variant.ts';

/**
 * About how many new facts a child takes in at a sitting: mean acquisition rate 4.05 in a study of 55 children
 * (Assessment for Effective Intervention 41(3), 2016, 131-140).
 */
const NEW_FACTS_AN_EVENING = 4;

/**
 * The most new facts that each part should bring, counted by the chance that the child does not know them, and rounded up in
 * cards (see admitNew); so not always a whole number.
 *
 * Those of an evening are shared out evenly over the parts that have any left, at least one each, so five or six such parts
 * bring more than four; a short evening brings half as many. `parts` are the rungs of each part.
 */
export function newFactsPerPart(
  parts: readonly (readonly Rung[])[],
  memory: ReadonlyMap<FactId, FactMemory>,
  variant: Variant,
): number {
  let sharing = 0;
  for (const rungs of parts) if (rungs.some((rung) => hasNewFacts(rung, memory))) sharing += 1;
  const limit = variant === 'short' ? NEW_FACTS_AN_EVENING / 2 : NEW_FACTS_AN_EVENING;
  return Math.max(1, limit / Math.max(1, sharing));
}

function hasNewFacts(rung: Rung, memory: ReadonlyMap<FactId, FactMemory>): boolean {
  return rung.kind === 'facts' && rung.facts.some((fact) => !hasBeenAsked(memory.get(fact)));
}

/** Whether a child was ever asked the fact itself; one that only relatives spoke of is new. */
export function hasBeenAsked(known: FactMemory | undefined): known is FactMemory {
  return known !== undefined && known.lastDay !== null;
}
