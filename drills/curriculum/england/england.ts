import type { Curriculum } from '../statement.ts';
import { YEAR_1 } from './year-1.ts';
import { YEAR_2 } from './year-2.ts';
import { YEAR_3 } from './year-3.ts';

/**
 * England: the national curriculum of 2013 (text of 28 September 2021) and, marked as such, the department's non-statutory
 * guidance of 2020. Most statements have no code of their own; those that have are printed with it.
 *
 * @example
 * ENGLAND.grades[0]; // { id: '1', label: 'Year 1' }
 */
export const ENGLAND: Curriculum = {
  title: 'England, national curriculum',
  grades: [
    { id: '1', label: 'Year 1' },
    { id: '2', label: 'Year 2' },
    { id: '3', label: 'Year 3' },
  ],
  statements: [...YEAR_1, ...YEAR_2, ...YEAR_3],
};
