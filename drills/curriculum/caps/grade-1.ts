import type { PlacedStatement } from '../statement.ts';
import { CAPS_2011, DOUBLING, PLAN_2022 } from './documents.ts';

/** What South Africa asks of Grade 1. */
export const GRADE_1: readonly PlacedStatement[] = [
  {
    ...PLAN_2022,
    grade: '1',
    text: 'count forwards and backwards to 100',
    rungs: ['counting.ones100', 'counting.onesback20', 'counting.onesback100'],
  },
  {
    ...CAPS_2011,
    grade: '1',
    text: 'count forwards and backwards in 1s from any number 0-100; forwards in 10s, 5s, 2s from any multiple 0-100',
    code: '1.2',
    status: 'secondary',
    rungs: [
      'counting.ones100',
      'counting.onesback20',
      'counting.onesback100',
      'counting.tens100',
      'counting.fives100',
      'counting.twos100',
    ],
  },
  {
    ...PLAN_2022,
    grade: '1',
    text: 'read and write number symbols and number names to 20',
    rungs: ['words.to20'],
  },
  {
    ...PLAN_2022,
    grade: '1',
    text: 'practise number bonds to 10',
    rungs: ['bonds.within5', 'bonds.to10', 'bonds.make10'],
  },
  {
    ...PLAN_2022,
    grade: '1',
    text: 'addition and subtraction in and out of context to 20',
    rungs: [
      'bonds.ties',
      'bonds.bridging',
      'bonds.to20',
      'takeaway.within5',
      'takeaway.to10',
      'takeaway.teens',
      'takeaway.bridging',
      'takeaway.to20',
    ],
  },
  {
    ...CAPS_2011,
    grade: '1',
    text: 'rapidly recall addition and subtraction facts to 10 (built up over the year)',
    code: null,
    status: 'memory',
    rungs: ['bonds.to10', 'takeaway.to10'],
  },
  {
    ...DOUBLING,
    grade: '1',
    status: 'memory',
    rungs: ['doubles.to5', 'doubles.to10', 'halves.to10', 'halves.to20'],
  },
];
