import type { PlacedStatement } from '../statement.ts';
import { GUIDANCE, NATIONAL } from './documents.ts';

/** What England asks of Year 3. */
export const YEAR_3: readonly PlacedStatement[] = [
  {
    ...NATIONAL,
    grade: '3',
    text: 'count from 0 in multiples of 4, 8, 50, 100; 10 or 100 more or less',
    rungs: ['counting.fours100'],
  },
  {
    ...NATIONAL,
    grade: '3',
    text: 'read and write numbers to 1000 in numerals and words',
    rungs: ['words.to200'],
  },
  {
    ...NATIONAL,
    grade: '3',
    text: 'add/subtract mentally three-digit and ones/tens/hundreds',
    rungs: ['counting.tensoff1000', 'counting.tensoffback1000'],
  },
  {
    ...GUIDANCE,
    grade: '3',
    text: 'secure fluency in + and - facts that bridge 10',
    code: '3NF-1',
    rungs: ['bonds.bridging', 'takeaway.bridging'],
  },
  {
    ...NATIONAL,
    grade: '3',
    text: 'tell/write time from analogue clock incl. Roman numerals I-XII, 12- and 24-hour; read to nearest minute',
    rungs: ['clock.all'],
  },
];
