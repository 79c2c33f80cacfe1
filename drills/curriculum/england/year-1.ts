import type { PlacedStatement } from '../statement.ts';
import { GUIDANCE, NATIONAL } from './documents.ts';

/** What England asks of Year 1. */
export const YEAR_1: readonly PlacedStatement[] = [
  {
    ...NATIONAL,
    grade: '1',
    text: 'count to and across 100 forwards and backwards from 0, 1 or any number',
    rungs: [
      'counting.ones100',
      'counting.onesback20',
      'counting.onesback100',
      'counting.onesacross',
      'counting.onesbackacross',
    ],
  },
  {
    ...NATIONAL,
    grade: '1',
    text: 'count in multiples of 2, 5 and 10',
    rungs: ['counting.tens100', 'counting.fives100', 'counting.twos100'],
  },
  {
    ...GUIDANCE,
    grade: '1',
    text: 'count forwards and backwards in 2s, 5s, 10s up to 10 multiples from any multiple; and through odd numbers',
    code: '1NF-2',
    rungs: ['counting.tens100', 'counting.tensback100'],
  },
  {
    ...NATIONAL,
    grade: '1',
    text: 'read and write 1 to 20 in numerals and words',
    rungs: ['words.to20'],
  },
  {
    ...NATIONAL,
    grade: '1',
    text: 'represent and use number bonds and related subtraction facts within 20',
    rungs: ['bonds.within5', 'bonds.make10', 'bonds.ties', 'bonds.make20', 'takeaway.within5'],
  },
  {
    ...GUIDANCE,
    grade: '1',
    text: 'fluency in + and - facts within 10',
    code: '1NF-1',
    rungs: ['bonds.within5', 'bonds.to10', 'takeaway.within5', 'takeaway.to10'],
  },
  {
    ...NATIONAL,
    grade: '1',
    text: 'add and subtract one- and two-digit numbers to 20 including zero',
    rungs: [
      'bonds.to10',
      'bonds.bridging',
      'bonds.to20',
      'takeaway.to10',
      'takeaway.teens',
      'takeaway.bridging',
      'takeaway.to20',
    ],
  },
  {
    ...NATIONAL,
    grade: '1',
    text: 'missing-number problems such as 7 = ? - 9',
    rungs: ['bonds.anygap10', 'bonds.anygap20', 'takeaway.anygap10', 'takeaway.anygap20'],
  },
  {
    ...NATIONAL,
    grade: '1',
    text: 'doubling numbers and quantities, in the notes and not statutory',
    status: 'memory',
    rungs: ['doubles.to5', 'doubles.to10'],
  },
  {
    ...NATIONAL,
    grade: '1',
    text: 'find half of a quantity, as a fraction',
    status: 'memory',
    rungs: ['halves.to10', 'halves.to20'],
  },
  {
    ...NATIONAL,
    grade: '1',
    text: 'tell time to the hour and half past; draw the hands',
    rungs: ['clock.oclock', 'clock.half', 'clock.mixed'],
  },
];
