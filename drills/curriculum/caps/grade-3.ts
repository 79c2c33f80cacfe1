import type { PlacedStatement } from '../statement.ts';
import { CAPS_2011, DOUBLING, PLAN_2022 } from './documents.ts';

/** What South Africa asks of Grade 3. */
export const GRADE_3: readonly PlacedStatement[] = [
  {
    ...PLAN_2022,
    grade: '3',
    text: 'count forwards and backwards to 1000',
    rungs: [
      'counting.ones1000',
      'counting.onesback1000',
      'counting.onesacross1000',
      'counting.onesbackacross1000',
    ],
  },
  {
    ...CAPS_2011,
    grade: '3',
    text: 'count forwards and backwards in 1s any number, and 10s, 5s, 2s, 3s, 4s any multiple, 0-1000; 20s, 25s, 50s, 100s to at least 1000',
    code: '1.2',
    status: 'secondary',
    rungs: [
      'counting.tens1000',
      'counting.tensback1000',
      'counting.fives1000',
      'counting.fivesback1000',
      'counting.twos1000',
      'counting.twosback1000',
      'counting.threes1000',
      'counting.threesback1000',
      'counting.fours1000',
      'counting.foursback1000',
    ],
  },
  {
    ...PLAN_2022,
    grade: '3',
    text: 'read and write number symbols and number names to 1000',
    rungs: ['words.to200'],
  },
  {
    ...PLAN_2022,
    grade: '3',
    text: 'practise number bonds to 30',
    rungs: ['bonds.make20', 'bonds.to20'],
  },
  {
    ...CAPS_2011,
    grade: '3',
    text: 'rapidly recall + and - facts to 20; multiples of 10 to 100; 2x facts to 20, 10x facts to 100',
    code: null,
    status: 'memory',
    rungs: ['bonds.to20', 'takeaway.to20', 'times.twos', 'times.tens'],
  },
  {
    ...DOUBLING,
    grade: '3',
    status: 'memory',
    rungs: ['doubles.to20', 'doubles.tens', 'halves.to40', 'halves.tens'],
  },
  {
    ...CAPS_2011,
    grade: '3',
    text: '12-hour time in hours, half hours, quarter hours and minutes on analogue and digital; durations in hours, half and quarter hours',
    code: '4.1',
    status: 'secondary',
    rungs: ['clock.fivepast', 'clock.fiveto', 'clock.all'],
  },
];
