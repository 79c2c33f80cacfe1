import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { z } from 'zod';
import { FURTHER } from '../../drills/curriculum/further.ts';
import type { PlacedStatement } from '../../drills/curriculum/statement.ts';
import { isUsual, PROFILES, type ProfileId, type RungId } from '../../drills/index.ts';

// A collection of statements of curricula with where each was read, and whether it was read at all. Main documents: Common Core
// State Standards for Mathematics (NGA and CCSSO, 2010); National Curriculum in England, mathematics programmes of study
// (Department for Education, 2013, text of 28 September 2021); Mathematics guidance key stages 1 and 2 (the same, 2020);
// Annual Teaching Plan 2022 and CAPS Foundation Phase Mathematics (Department of Basic Education, South Africa, 2011);
// Australian Curriculum version 9 (ACARA, 2022).
const FACTS_FILE = '../shared/facts/curriculum.json';
const IS_HERE = existsSync(FACTS_FILE);

const rows = z
  .array(
    z.object({
      curriculum: z.string(),
      code: z.string(),
      grade: z.string(),
      statement: z.string(),
      found: z.boolean(),
      code_found: z.boolean(),
      source: z.string(),
    }),
  )
  .parse(IS_HERE ? JSON.parse(readFileSync(FACTS_FILE, 'utf8')) : []);

/** How a document of ours is called in the collection, and how its grades are. */
const DOCUMENTS: Readonly<Record<string, readonly [string, (grade: string) => string]>> = {
  'England, national curriculum': ['National Curriculum in England', (grade) => `Y${grade}`],
  'England, ready-to-progress guidance': ['Mathematics guidance', (grade) => `Y${grade}`],
  'Common Core': ['Common Core', (grade) => grade],
  'South Africa, CAPS': ['CAPS Foundation Phase', (grade) => grade],
  'South Africa, annual teaching plan 2022': ['DBE Recovery Annual', (grade) => grade],
  'Australian Curriculum v9': ['Australian Curriculum', (grade) => `Y${grade}`],
  'New Zealand Curriculum': ['New Zealand Curriculum', (grade) => `Level ${grade}`],
  'Virginia Standards of Learning': ['Standards of Learning', (grade) => grade],
};

/** Remembered from the notes and the fractions of England's Year 1; the collection has no row for them. */
const NOT_COLLECTED = [
  'doubling numbers and quantities, in the notes and not statutory',
  'find half of a quantity, as a fraction',
];

const STATEMENTS = [...PROFILES, ...FURTHER]
  .flatMap(({ statements }) => statements)
  .filter(({ text }) => !NOT_COLLECTED.includes(text));

function rowOf({ document, grade, text }: PlacedStatement) {
  const [curriculum, gradeOf] = DOCUMENTS[document] ?? ['no such document', String];
  return rows.find(
    (row) =>
      row.curriculum.startsWith(curriculum) &&
      [gradeOf(grade), '1-3'].includes(row.grade) &&
      row.statement.startsWith(text),
  );
}

if (!IS_HERE) {
  describe('the collection of curriculum statements', () => {
    it.skip(`is not at ${FACTS_FILE}; put the file there to check against it`, () => {});
  });
}

describe.runIf(IS_HERE)('every statement stands in the collection', () => {
  test.each(STATEMENTS)('$document, $grade: $text', (statement) => {
    const row = rowOf(statement);
    if (row === undefined) throw new Error('there is no such row');
    // Read for Grade 2; that the other grades say it too is remembered only.
    const isDoubling = row.grade === '1-3' && statement.grade !== '2';
    const isSecondHand = /transcription|paraphrase|title with code/.test(row.source);
    const status = row.found && !isDoubling ? (isSecondHand ? 'secondary' : 'found') : 'memory';
    expect(statement.status).toBe(status);
    expect(statement.code).toBe(row.code_found ? row.code : null);
  });

  test('the ones without a row are remembered, and said to be', () => {
    const own = PROFILES.flatMap(({ statements }) => statements).filter(({ text }) =>
      NOT_COLLECTED.includes(text),
    );
    expect(own.map(({ status }) => status)).toEqual(['memory', 'memory']);
    expect(own.map(rowOf)).toEqual([undefined, undefined]);
  });
});

/** The main rows, kept here too, so that the check does not hang on the collection. */
const MAIN: readonly [ProfileId, string, readonly RungId[], readonly RungId[]][] = [
  // K.OA.A.5 fluent within 5, K.OA.A.4 partners that make 10, K.CC.A.1 count to 100 by ones and tens; nothing backwards.
  [
    'ccss',
    'K',
    ['bonds.within5', 'takeaway.within5', 'bonds.make10', 'counting.ones100', 'counting.tens100'],
    ['bonds.to10', 'counting.onesback20', 'words.to20', 'clock.oclock'],
  ],
  // 1.OA.C.6 within 20, 1.OA.D.8 unknown in any position, 1.MD.B.3 hours and half hours, 1.NBT.A.1 to 120.
  [
    'ccss',
    '1',
    ['bonds.to10', 'takeaway.to20', 'takeaway.anygap20', 'clock.mixed', 'counting.ones100'],
    ['clock.quarters', 'counting.ones', 'counting.onesback100', 'words.to20'],
  ],
  // 2.MD.C.7 five minutes, 2.NBT.A.2 within 1000 by 5s, 10s, 2.NBT.A.3 number names to 1000, 2.OA.B.2 sums from memory.
  [
    'ccss',
    '2',
    ['clock.all', 'counting.fives1000', 'words.to200', 'bonds.bridging', 'doubles.to10'],
    ['counting.fivesback', 'counting.twos100', 'times.twos'],
  ],
  // To and across 100 both ways; 2s, 5s, 10s; words to 20; bonds within 20; 7 = ? - 9; the hour and half past.
  [
    'england',
    '1',
    ['counting.onesbackacross', 'counting.fives100', 'words.to20', 'bonds.make20', 'clock.half'],
    ['counting.threes100', 'words.to100', 'clock.quarterpast', 'times.twos'],
  ],
  // 10s from any number both ways; 3s; words to 100; tables of 2, 5, 10; five minutes.
  [
    'england',
    '2',
    [
      'counting.tensoffback100',
      'counting.threesback100',
      'words.to100',
      'times.mixed',
      'clock.all',
    ],
    ['counting.fours100', 'words.to200', 'counting.tens'],
  ],
  // Counting to 100 both ways in ones, forwards in 10s, 5s, 2s; names to 20; bonds to 10; no clock (from memory).
  [
    'caps',
    '1',
    ['counting.onesback100', 'counting.twos100', 'words.to20', 'bonds.make10'],
    ['counting.twosback100', 'counting.threes100', 'clock.oclock', 'bonds.make20'],
  ],
  // Counting to 200 both ways; names to 200; bonds to 20; quarter hours (from memory).
  [
    'caps',
    '2',
    ['counting.onesback', 'counting.foursback', 'words.to200', 'bonds.make20', 'clock.quarters'],
    ['clock.fivepast', 'counting.ones1000', 'times.twos'],
  ],
  // Counting to 1000 both ways; minutes; twice to 20 and ten times to 100 (from memory).
  [
    'caps',
    '3',
    ['counting.onesback1000', 'counting.threes1000', 'clock.all', 'times.twos', 'times.tens'],
    ['times.fives', 'clock.oclock'],
  ],
  // Version 9 has no clock face before Year 2, and quarter hours there.
  [
    'acara',
    '2',
    ['clock.quarters', 'bonds.bridging', 'doubles.to10', 'times.twos'],
    ['clock.fivepast', 'words.to100'],
  ],
  ['acara', '1', ['bonds.to20', 'takeaway.bridging'], ['clock.oclock', 'clock.half']],
];

test.each(MAIN)('the main rows of %s, %s', (profile, grade, usual, notUsual) => {
  expect(usual.filter((rung) => !isUsual(profile, grade, rung))).toEqual([]);
  expect(notUsual.filter((rung) => isUsual(profile, grade, rung))).toEqual([]);
});
