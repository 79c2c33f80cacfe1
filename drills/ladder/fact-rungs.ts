import type { FactId } from '../facts/fact-id.ts';
import { clocksAt, differencesFrom, doublesTo, gapsTo, halvesTo, sumsTo } from './fact-sets.ts';
import type { FactRung, RungId } from './rung.ts';

const DEFAULT_CARDS = 10;
/** Two to three seconds a card is the usual classroom measure of knowing a fact (Isaacs and Carroll 1999, as quoted in reviews). */
const DEFAULT_SECONDS = 3;
/** A clock takes longer to look at than a sum (common practice, no source). */
const CLOCK_SECONDS = 5;

const WITHIN_FIVE = 'Common Core K.OA.A.5: fluently add and subtract within 5';
const WITHIN_TEN = 'Common Core 1.OA.C.6: fluency within 10';
const EVEN_TO_TWENTY = 'Common Core 2.OA.C.3: even numbers to 20 as two equal addends';
const NO_SOURCE = 'common practice, no source';
const CLOCK = 'Common Core 1.MD.B.3: time in hours and half hours';

/** The rungs with a fixed set of facts, strand by strand, easier ones first. */
export const FACT_RUNGS: readonly FactRung[] = [
  rung('bonds', 'within5', 'bonds to 5', sumsTo(5), WITHIN_FIVE),
  rung('bonds', 'to10', 'bonds to 10', sumsTo(10), WITHIN_TEN),
  rung(
    'bonds',
    'make10',
    'what makes 10',
    gapsTo(10),
    'Common Core K.OA.A.4: the partner that makes 10, for 1 to 9; 0 and 10 are ours',
  ),
  rung('takeaway', 'within5', 'take away within 5', differencesFrom(5), WITHIN_FIVE),
  rung('takeaway', 'to10', 'take away within 10', differencesFrom(10), WITHIN_TEN),
  rung('doubles', 'to5', 'doubles to 5 + 5', doublesTo(5), NO_SOURCE),
  rung('doubles', 'to10', 'doubles to 10 + 10', doublesTo(10), EVEN_TO_TWENTY),
  rung('halves', 'to10', 'halves of even numbers to 10', halvesTo(10), NO_SOURCE),
  rung('halves', 'to20', 'halves of even numbers to 20', halvesTo(20), EVEN_TO_TWENTY),
  rung('clock', 'oclock', 'clock (o\u2019clock)', clocksAt([0]), CLOCK),
  rung('clock', 'half', 'clock (half past)', clocksAt([30]), CLOCK),
  rung('clock', 'mixed', 'clock (o\u2019clock and half past)', clocksAt([0, 30]), CLOCK),
];

function rung(
  strand: FactRung['strand'],
  step: string,
  title: string,
  facts: readonly FactId[],
  source: string,
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
    source,
  };
}
