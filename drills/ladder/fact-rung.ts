import { sourcesOf } from '../curriculum/sources.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { FactRung, RungId } from './rung.ts';

const DEFAULT_CARDS = 10;
/** Two to three seconds a card is the usual classroom measure of knowing a fact (Isaacs and Carroll 1999, as quoted in reviews). */
const DEFAULT_SECONDS = 3;
/** A clock takes longer to look at than a sum (common practice, no source). */
const CLOCK_SECONDS = 5;

/**
 * Makes one rung of a strand with a fixed set of facts. Ten cards are asked, or the whole set when it is smaller.
 *
 * @example
 * factRung('doubles', 'to5', 'doubles to 5 + 5', doublesTo(5)).cards; // 5
 */
export function factRung(
  strand: FactRung['strand'],
  step: string,
  title: string,
  facts: readonly FactId[],
  needs: readonly RungId[] = [],
): FactRung {
  const id: RungId = `${strand}.${step}`;
  return {
    kind: 'facts',
    id,
    strand,
    title,
    facts,
    cards: Math.min(DEFAULT_CARDS, facts.length),
    seconds: strand === 'clock' ? CLOCK_SECONDS : DEFAULT_SECONDS,
    needs,
    sources: sourcesOf(id),
  };
}
