import { factRung } from './fact-rung.ts';
import {
  bridgingDifferences,
  bridgingSums,
  differencesFrom,
  differencesOfTeens,
  gapsAnywhereFrom,
  gapsAnywhereTo,
  gapsTo,
  sumsTo,
  tiesTo,
} from './fact-sets.ts';
import type { FactRung } from './rung.ts';

/**
 * Adding, easier rungs first. A gap has the result given and one number missing.
 *
 * @example
 * BOND_RUNGS[0]?.id; // 'bonds.within5'
 */
export const BOND_RUNGS: readonly FactRung[] = [
  factRung('bonds', 'within5', 'adding within 5', sumsTo(5)),
  factRung('bonds', 'to10', 'adding within 10', sumsTo(10), ['bonds.within5']),
  factRung('bonds', 'make10', 'what makes 10', gapsTo(10), ['bonds.within5']),
  factRung('bonds', 'ties', 'ties and near ties to 20', tiesTo(20), ['bonds.to10']),
  factRung('bonds', 'bridging', 'adding across 10', bridgingSums(), ['bonds.make10', 'bonds.ties']),
  factRung('bonds', 'make20', 'what makes 20', gapsTo(20), ['bonds.make10']),
  factRung('bonds', 'to20', 'adding within 20', sumsTo(20), ['bonds.bridging']),
  factRung('bonds', 'anygap10', 'missing number, adding within 10', gapsAnywhereTo(10), [
    'bonds.to10',
    'bonds.make10',
  ]),
  factRung('bonds', 'anygap20', 'missing number, adding within 20', gapsAnywhereTo(20), [
    'bonds.to20',
    'bonds.anygap10',
  ]),
];

/**
 * Taking away, easier rungs first.
 *
 * @example
 * TAKE_AWAY_RUNGS[0]?.id; // 'takeaway.within5'
 */
export const TAKE_AWAY_RUNGS: readonly FactRung[] = [
  factRung('takeaway', 'within5', 'take away within 5', differencesFrom(5), ['bonds.within5']),
  factRung('takeaway', 'to10', 'take away within 10', differencesFrom(10), [
    'takeaway.within5',
    'bonds.to10',
  ]),
  factRung('takeaway', 'teens', 'take away from 11 to 19, not across 10', differencesOfTeens(), [
    'takeaway.to10',
  ]),
  factRung('takeaway', 'bridging', 'take away across 10', bridgingDifferences(), [
    'takeaway.teens',
    'bonds.bridging',
  ]),
  factRung('takeaway', 'to20', 'take away within 20', differencesFrom(20), ['takeaway.bridging']),
  factRung('takeaway', 'anygap10', 'missing number, take away within 10', gapsAnywhereFrom(10), [
    'takeaway.to10',
    'bonds.anygap10',
  ]),
  factRung('takeaway', 'anygap20', 'missing number, take away within 20', gapsAnywhereFrom(20), [
    'takeaway.to20',
    'takeaway.anygap10',
  ]),
];
