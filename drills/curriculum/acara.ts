import type { Curriculum } from './statement.ts';

const AUSTRALIAN = { document: 'Australian Curriculum v9' } as const;

/**
 * The Australian Curriculum, version 9 (2022). It puts no clock face before Year 2.
 *
 * @example
 * ACARA.statements.some(({ grade, rungs }) => grade === '1' && rungs.includes('clock.oclock')); // false
 */
export const ACARA: Curriculum = {
  title: 'Australian Curriculum v9',
  grades: [
    { id: '1', label: 'Year 1' },
    { id: '2', label: 'Year 2' },
    { id: '3', label: 'Year 3' },
  ],
  statements: [
    {
      ...AUSTRALIAN,
      grade: '1',
      text: 'recognise, represent, order numbers to at least 120',
      code: 'AC9M1N01',
      status: 'found',
      rungs: ['counting.ones100'],
    },
    {
      ...AUSTRALIAN,
      grade: '1',
      text: 'skip-counting patterns, initially 2s, 5s, 10s',
      code: null,
      status: 'memory',
      rungs: ['counting.tens100', 'counting.fives100', 'counting.twos100'],
    },
    {
      ...AUSTRALIAN,
      grade: '1',
      text: 'add and subtract within 20 using part-part-whole knowledge to 10',
      code: 'AC9M1N04',
      status: 'found',
      rungs: [
        'bonds.within5',
        'bonds.to10',
        'bonds.make10',
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
      ...AUSTRALIAN,
      grade: '2',
      text: 'numbers to at least 1000',
      code: null,
      status: 'memory',
      rungs: ['counting.ones', 'counting.ones1000'],
    },
    {
      ...AUSTRALIAN,
      grade: '2',
      text: 'recall addition facts to 20 and extend to related subtraction facts',
      code: 'AC9M2A02',
      status: 'secondary',
      rungs: [
        'bonds.bridging',
        'bonds.to20',
        'takeaway.teens',
        'takeaway.bridging',
        'takeaway.to20',
      ],
    },
    {
      ...AUSTRALIAN,
      grade: '2',
      text: 'recall twos facts; derive division facts by doubling and halving',
      code: 'AC9M2A03',
      status: 'secondary',
      rungs: ['doubles.to5', 'doubles.to10', 'halves.to10', 'halves.to20', 'times.twos'],
    },
    {
      ...AUSTRALIAN,
      grade: '2',
      text: 'analogue clock to hour, half hour and quarter hour',
      code: 'AC9M2M04',
      status: 'found',
      rungs: [
        'clock.oclock',
        'clock.half',
        'clock.mixed',
        'clock.quarterpast',
        'clock.quarterto',
        'clock.quarters',
      ],
    },
    {
      ...AUSTRALIAN,
      grade: '3',
      text: 'extend addition/subtraction facts to 20 to mental strategies for larger numbers',
      code: null,
      status: 'memory',
      rungs: ['bonds.to20', 'takeaway.to20'],
    },
    {
      ...AUSTRALIAN,
      grade: '3',
      text: 'analogue and digital time to the nearest minute',
      code: 'AC9M3M04',
      status: 'secondary',
      rungs: ['clock.fivepast', 'clock.fiveto', 'clock.all'],
    },
  ],
};
