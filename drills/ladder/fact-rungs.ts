import { CLOCK_RUNGS } from './clock-rungs.ts';
import { factRung } from './fact-rung.ts';
import {
  doublesOfTens,
  doublesTo,
  halvesOfTens,
  halvesTo,
  tableOf,
  wordsOfTens,
  wordsTo,
} from './fact-sets.ts';
import type { FactRung } from './rung.ts';
import { BOND_RUNGS, TAKE_AWAY_RUNGS } from './sum-rungs.ts';

const WORD_RUNGS: readonly FactRung[] = [
  factRung('words', 'to20', 'number words to 20', wordsTo(20)),
  factRung('words', 'tens', 'number words of the tens to 100', wordsOfTens(100), ['words.to20']),
  factRung('words', 'to100', 'number words to 100', wordsTo(100), ['words.tens']),
  factRung('words', 'to200', 'number words to 200', wordsTo(200), ['words.to100']),
];

const DOUBLE_RUNGS: readonly FactRung[] = [
  factRung('doubles', 'to5', 'doubles to 5 + 5', doublesTo(5), ['bonds.within5']),
  factRung('doubles', 'to10', 'doubles to 10 + 10', doublesTo(10), ['doubles.to5']),
  factRung('doubles', 'to20', 'doubles to 20 + 20', doublesTo(20), ['doubles.to10']),
  factRung('doubles', 'tens', 'doubles of tens to 100', doublesOfTens(100), ['doubles.to5']),
];

const HALF_RUNGS: readonly FactRung[] = [
  factRung('halves', 'to10', 'halves of even numbers to 10', halvesTo(10), ['doubles.to5']),
  factRung('halves', 'to20', 'halves of even numbers to 20', halvesTo(20), [
    'halves.to10',
    'doubles.to10',
  ]),
  factRung('halves', 'to40', 'halves of even numbers to 40', halvesTo(40), [
    'halves.to20',
    'doubles.to20',
  ]),
  factRung('halves', 'tens', 'halves of tens to 100', halvesOfTens(100), [
    'halves.to10',
    'doubles.tens',
  ]),
];

/**
 * The rungs with a fixed set of facts that come before counting, strand by strand, easier ones first.
 *
 * @example
 * FACT_RUNGS[0]?.id; // 'words.to20'
 */
export const FACT_RUNGS: readonly FactRung[] = [
  ...WORD_RUNGS,
  ...BOND_RUNGS,
  ...TAKE_AWAY_RUNGS,
  ...DOUBLE_RUNGS,
  ...HALF_RUNGS,
  ...CLOCK_RUNGS,
];

/**
 * The times tables that come after counting. The two and the ten come before the five: their products follow from doubling and
 * from reading tens (common practice, no source).
 *
 * @example
 * TIMES_RUNGS[0]?.facts[2]; // 'times:3x2'
 */
export const TIMES_RUNGS: readonly FactRung[] = [
  factRung('times', 'twos', 'two times table', tableOf(2), ['counting.twos100']),
  factRung('times', 'tens', 'ten times table', tableOf(10), ['counting.tens100']),
  factRung('times', 'fives', 'five times table', tableOf(5), ['counting.fives100']),
  factRung(
    'times',
    'mixed',
    'two, five and ten times tables',
    [2, 5, 10].flatMap((table) => tableOf(table)),
    ['times.twos', 'times.tens', 'times.fives'],
  ),
];
