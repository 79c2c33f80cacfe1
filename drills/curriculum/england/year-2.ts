import type { PlacedStatement } from '../statement.ts';
import { GUIDANCE, NATIONAL } from './documents.ts';

/** What England asks of Year 2. */
export const YEAR_2: readonly PlacedStatement[] = [
  {
    ...NATIONAL,
    grade: '2',
    text: 'count in 2s, 3s and 5s from 0 and in 10s from any number, forward and backward',
    code: '2N1',
    rungs: [
      'counting.tensback100',
      'counting.tensoff100',
      'counting.tensoffback100',
      'counting.fives100',
      'counting.fivesback100',
      'counting.twos100',
      'counting.twosback100',
      'counting.threes100',
      'counting.threesback100',
    ],
  },
  {
    ...NATIONAL,
    grade: '2',
    text: 'read and write numbers to at least 100 in numerals and words',
    code: '2N2a',
    rungs: ['words.tens', 'words.to100'],
  },
  {
    ...NATIONAL,
    grade: '2',
    text: 'recall and use + and - facts to 20 fluently; derive related facts to 100',
    code: '2C1',
    rungs: [
      'bonds.make20',
      'bonds.bridging',
      'bonds.to20',
      'takeaway.teens',
      'takeaway.bridging',
      'takeaway.to20',
    ],
  },
  {
    ...GUIDANCE,
    grade: '2',
    text: 'add and subtract across 10',
    code: '2AS-1',
    rungs: ['bonds.bridging', 'takeaway.bridging'],
  },
  {
    ...GUIDANCE,
    grade: '2',
    text: 'secure fluency in + and - facts within 10',
    code: '2NF-1',
    rungs: ['bonds.to10', 'takeaway.to10'],
  },
  {
    ...NATIONAL,
    grade: '2',
    text: '2, 5 and 10 times tables and division facts; odd and even',
    code: '2C6',
    rungs: ['times.twos', 'times.tens', 'times.fives', 'times.mixed'],
  },
  {
    ...NATIONAL,
    grade: '2',
    text: 'tell and write time to five minutes including quarter past/to; draw the hands',
    rungs: [
      'clock.quarterpast',
      'clock.quarterto',
      'clock.quarters',
      'clock.fivepast',
      'clock.fiveto',
      'clock.all',
    ],
  },
];
