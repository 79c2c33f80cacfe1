import type { Curriculum } from '../statement.ts';
import { GRADE_1 } from './grade-1.ts';
import { GRADE_2 } from './grade-2.ts';
import { GRADE_3 } from './grade-3.ts';
import { KINDERGARTEN } from './kindergarten.ts';

/**
 * The Common Core State Standards for Mathematics (United States, 2010). They ask for no counting backwards; ten less than a
 * number is the one step back among them.
 *
 * @example
 * CCSS.statements[0]?.text; // 'count to 100 in ones and in tens'
 */
export const CCSS: Curriculum = {
  title: 'Common Core (United States)',
  grades: [
    { id: 'K', label: 'Kindergarten' },
    { id: '1', label: 'Grade 1' },
    { id: '2', label: 'Grade 2' },
    { id: '3', label: 'Grade 3' },
  ],
  statements: [...KINDERGARTEN, ...GRADE_1, ...GRADE_2, ...GRADE_3],
};
