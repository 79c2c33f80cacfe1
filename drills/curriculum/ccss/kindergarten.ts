import type { PlacedStatement } from '../statement.ts';
import { COMMON_CORE } from './documents.ts';

/** What the Common Core asks of Kindergarten. */
export const KINDERGARTEN: readonly PlacedStatement[] = [
  {
    ...COMMON_CORE,
    grade: 'K',
    text: 'count to 100 in ones and in tens',
    code: 'K.CC.A.1',
    rungs: ['counting.ones100', 'counting.tens100'],
  },
  {
    ...COMMON_CORE,
    grade: 'K',
    text: 'for each of 1-9 find the partner that makes 10',
    code: 'K.OA.A.4',
    rungs: ['bonds.make10'],
  },
  {
    ...COMMON_CORE,
    grade: 'K',
    text: 'fluently add and subtract within 5',
    code: 'K.OA.A.5',
    rungs: ['bonds.within5', 'takeaway.within5'],
  },
];
