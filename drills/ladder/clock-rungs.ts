import { factRung } from './fact-rung.ts';
import { clocksAt } from './fact-sets.ts';
import type { FactRung } from './rung.ts';

const FIVE_PAST = [5, 10, 20, 25];
const FIVE_TO = [35, 40, 50, 55];
const EVERY_FIVE = Array.from({ length: 12 }, (_, index) => 5 * index);

/**
 * Reading a clock face, easier rungs first: to the half hour, the quarter, five minutes.
 *
 * @example
 * CLOCK_RUNGS[0]?.title; // 'clock (o’clock)'
 */
export const CLOCK_RUNGS: readonly FactRung[] = [
  factRung('clock', 'oclock', 'clock (o\u2019clock)', clocksAt([0])),
  factRung('clock', 'half', 'clock (half past)', clocksAt([30]), ['clock.oclock']),
  factRung('clock', 'mixed', 'clock (o\u2019clock and half past)', clocksAt([0, 30]), [
    'clock.half',
  ]),
  factRung('clock', 'quarterpast', 'clock (quarter past)', clocksAt([15]), ['clock.mixed']),
  factRung('clock', 'quarterto', 'clock (quarter to)', clocksAt([45]), ['clock.quarterpast']),
  factRung('clock', 'quarters', 'clock (quarter hours)', clocksAt([0, 15, 30, 45]), [
    'clock.quarterto',
  ]),
  factRung('clock', 'fivepast', 'clock (five minutes, past)', clocksAt(FIVE_PAST), [
    'clock.quarters',
    'counting.fives100',
  ]),
  factRung('clock', 'fiveto', 'clock (five minutes, to)', clocksAt(FIVE_TO), ['clock.fivepast']),
  factRung('clock', 'all', 'clock (every five minutes)', clocksAt(EVERY_FIVE), ['clock.fiveto']),
];
