import type { PlacedStatement } from '../statement.ts';
import { COMMON_CORE } from './documents.ts';

/** What the Common Core asks of Grade 3. */
export const GRADE_3: readonly PlacedStatement[] = [
  {
    ...COMMON_CORE,
    grade: '3',
    text: 'fluently multiply/divide within 100; all products of one-digit numbers from memory',
    code: '3.OA.C.7',
    rungs: ['times.twos', 'times.tens', 'times.fives', 'times.mixed'],
  },
  {
    ...COMMON_CORE,
    grade: '3',
    text: 'tell and write time to nearest minute; measure and solve problems on intervals in minutes',
    code: '3.MD.A.1',
    rungs: ['clock.all'],
  },
];
