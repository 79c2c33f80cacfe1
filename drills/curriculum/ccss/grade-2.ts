import type { PlacedStatement } from '../statement.ts';
import { COMMON_CORE } from './documents.ts';

/** What the Common Core asks of Grade 2. */
export const GRADE_2: readonly PlacedStatement[] = [
  {
    ...COMMON_CORE,
    grade: '2',
    text: 'count within 1000; skip-count by 5s, 10s, 100s',
    code: '2.NBT.A.2',
    rungs: [
      'counting.ones',
      'counting.onesacross',
      'counting.tens',
      'counting.fives100',
      'counting.fives',
      'counting.ones1000',
      'counting.onesacross1000',
      'counting.tens1000',
      'counting.fives1000',
    ],
  },
  {
    ...COMMON_CORE,
    grade: '2',
    text: 'mentally add/subtract 10 or 100 to/from 100-900',
    code: '2.NBT.B.8',
    rungs: ['counting.tensoff1000', 'counting.tensoffback1000'],
  },
  {
    ...COMMON_CORE,
    grade: '2',
    text: 'read and write numbers to 1000 as numerals, number names and expanded form',
    code: '2.NBT.A.3',
    rungs: ['words.to20', 'words.tens', 'words.to100', 'words.to200'],
  },
  {
    ...COMMON_CORE,
    grade: '2',
    text: 'fluently add and subtract within 20 mentally; by end of grade know from memory all sums of two one-digit numbers',
    code: '2.OA.B.2',
    rungs: [
      'bonds.ties',
      'bonds.bridging',
      'bonds.to20',
      'takeaway.teens',
      'takeaway.bridging',
      'takeaway.to20',
    ],
  },
  {
    ...COMMON_CORE,
    grade: '2',
    text: 'odd or even up to 20; write an even number as a sum of two equal addends',
    code: '2.OA.C.3',
    rungs: ['doubles.to5', 'doubles.to10', 'halves.to10', 'halves.to20'],
  },
  {
    ...COMMON_CORE,
    grade: '2',
    text: 'tell and write time to nearest five minutes with a.m./p.m., analogue and digital',
    code: '2.MD.C.7',
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
