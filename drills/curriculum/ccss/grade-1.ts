import type { PlacedStatement } from '../statement.ts';
import { COMMON_CORE } from './documents.ts';

/** What the Common Core asks of Grade 1. */
export const GRADE_1: readonly PlacedStatement[] = [
  {
    ...COMMON_CORE,
    grade: '1',
    text: 'count to 120 from any number below 120; read and write numerals in that range',
    code: '1.NBT.A.1',
    rungs: ['counting.ones100'],
  },
  {
    ...COMMON_CORE,
    grade: '1',
    text: '10 more / 10 less than a two-digit number without counting',
    code: '1.NBT.C.5',
    rungs: ['counting.tensoff100', 'counting.tensoffback100'],
  },
  {
    ...COMMON_CORE,
    grade: '1',
    text: 'add and subtract within 20; fluent within 10',
    code: '1.OA.C.6',
    rungs: [
      'bonds.to10',
      'bonds.ties',
      'bonds.bridging',
      'bonds.to20',
      'takeaway.to10',
      'takeaway.teens',
      'takeaway.bridging',
      'takeaway.to20',
    ],
  },
  {
    ...COMMON_CORE,
    grade: '1',
    text: 'find the unknown whole number in any position of an addition or subtraction equation',
    code: '1.OA.D.8',
    rungs: [
      'bonds.make20',
      'bonds.anygap10',
      'bonds.anygap20',
      'takeaway.anygap10',
      'takeaway.anygap20',
    ],
  },
  {
    ...COMMON_CORE,
    grade: '1',
    text: 'tell and write time in hours and half hours, analogue and digital',
    code: '1.MD.B.3',
    rungs: ['clock.oclock', 'clock.half', 'clock.mixed'],
  },
];
