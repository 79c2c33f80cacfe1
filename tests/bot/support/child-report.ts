import { storedDay } from '../../../db/index.ts';
import { type ChildReport, reportChild } from '../../../drills/index.ts';

/** A report that has something of everything: a strand known well, one being met, one just begun. */
export const aReport: ChildReport = {
  first: storedDay('2026-08-31'),
  last: storedDay('2026-09-18'),
  schoolDays: 15,
  practised: 11,
  weeks: ['2026-08-31', '2026-09-07', '2026-09-14'].map(storedDay),
  strands: [
    {
      strand: 'bonds',
      right: 60,
      asked: 100,
      weeks: [{ right: 4, asked: 20 }, null, { right: 16, asked: 20 }],
      steps: [
        { rung: 'bonds.to10', level: 'in_between' },
        { rung: 'bonds.bridging', level: 'not_yet' },
      ],
      meeting: ['add:7+8', 'add:4+9'],
    },
    {
      strand: 'doubles',
      right: 50,
      asked: 50,
      weeks: [{ right: 25, asked: 25 }, null, { right: 25, asked: 25 }],
      steps: [{ rung: 'doubles.to10', level: 'secure' }],
      meeting: [],
    },
    {
      strand: 'clock',
      right: 3,
      asked: 4,
      weeks: [null, null, { right: 3, asked: 4 }],
      steps: [{ rung: 'clock.half', level: 'too_few' }],
      meeting: ['clock:0330'],
    },
  ],
  pages: 22,
  practise: ['add:7+8', 'add:4+9', 'clock:0330', 'double:9', 'half:14'],
  goOn: ['doubles.to20'],
};

/** Of a child without an evening. */
export const noReport: ChildReport = reportChild({
  days: [],
  evenings: [],
  memory: new Map(),
  today: storedDay('2026-09-18'),
});
