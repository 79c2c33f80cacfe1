import type { Curriculum } from './statement.ts';

/**
 * Curricula that are no profile of ours but state a range more plainly than those that are. They are printed as sources only.
 *
 * @example
 * FURTHER[0]?.grades; // [{ id: '1', label: 'Level 1' }]
 */
export const FURTHER: readonly Curriculum[] = [
  {
    title: 'New Zealand Curriculum',
    grades: [{ id: '1', label: 'Level 1' }],
    statements: [
      {
        document: 'New Zealand Curriculum',
        grade: '1',
        text: 'forward and backward counting sequences to 100',
        code: 'NA1-2',
        status: 'found',
        rungs: ['counting.ones100', 'counting.onesback20', 'counting.onesback100'],
      },
      {
        document: 'New Zealand Curriculum',
        grade: '1',
        text: 'groupings with 5, within 10 and with 10; doubles to 10 at least',
        code: 'NA1-3',
        status: 'found',
        rungs: ['bonds.within5', 'bonds.make10', 'doubles.to5'],
      },
    ],
  },
  {
    title: 'Virginia Standards of Learning',
    grades: [{ id: '2', label: 'Grade 2' }],
    statements: [
      {
        document: 'Virginia Standards of Learning',
        grade: '2',
        text: 'flexible counting up to 200: by 2s to at least 50 from multiples of 2; by 5s, 10s, 25s to at least 200',
        code: '2.NS.1',
        status: 'found',
        rungs: ['counting.tens', 'counting.fives'],
      },
    ],
  },
];
