import type { Curriculum } from '../statement.ts';
import { GRADE_1 } from './grade-1.ts';
import { GRADE_2 } from './grade-2.ts';
import { GRADE_3 } from './grade-3.ts';

/**
 * South Africa: the curriculum statement of 2011 (CAPS, Foundation Phase), which was read in transcriptions or is remembered, and
 * the department's annual teaching plan of 2022, which was read. The plan asks for number names to 20 and 200 where the
 * statement of 2011 asks for 10 and 100; the plan's, being newer, are placed.
 *
 * @example
 * CAPS.statements[0]?.text; // 'count forwards and backwards to 100'
 */
export const CAPS: Curriculum = {
  title: 'South Africa, CAPS and teaching plan 2022',
  grades: [
    { id: '1', label: 'Grade 1' },
    { id: '2', label: 'Grade 2' },
    { id: '3', label: 'Grade 3' },
  ],
  statements: [...GRADE_1, ...GRADE_2, ...GRADE_3],
};
