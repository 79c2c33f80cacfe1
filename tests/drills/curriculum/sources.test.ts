import { describe, expect, test } from 'vitest';
import { ACARA } from '../../../drills/curriculum/acara.ts';
import { CAPS } from '../../../drills/curriculum/caps/caps.ts';
import { CCSS } from '../../../drills/curriculum/ccss/ccss.ts';
import { ENGLAND } from '../../../drills/curriculum/england/england.ts';
import { FURTHER } from '../../../drills/curriculum/further.ts';
import { sourcesOf } from '../../../drills/curriculum/sources.ts';
import { RUNGS, rungById } from '../../../drills/index.ts';

describe('sourcesOf', () => {
  test('the statement comes first, then document, grade and printed code', () => {
    expect(sourcesOf('bonds.within5')[2]).toBe(
      'fluently add and subtract within 5 (Common Core, Kindergarten, K.OA.A.5)',
    );
    expect(sourcesOf('clock.oclock')[0]).toBe(
      'tell time to the hour and half past; draw the hands (England, national curriculum, Year 1)',
    );
  });

  test('what was not read in the document itself is marked', () => {
    expect(sourcesOf('counting.tens1000')).toContainEqual(
      expect.stringMatching(/\(South Africa, CAPS, Grade 3, 1\.2, read in a summary only\)$/),
    );
    expect(sourcesOf('times.tens')).toContainEqual(
      expect.stringMatching(/\(South Africa, CAPS, Grade 3, from memory, please check\)$/),
    );
  });

  test('a rung nobody asks for is common practice', () => {
    expect(sourcesOf('counting.tensoff')).toEqual(['common practice, no source']);
    expect(sourcesOf('bonds.to30')).toEqual(['common practice, no source']);
  });

  test('every statement is told with each of its rungs, and nothing else is told', () => {
    const curricula = [ENGLAND, CCSS, CAPS, ACARA, ...FURTHER];
    for (const { id } of RUNGS) {
      const asked = curricula.flatMap(({ statements }) =>
        statements.filter(({ rungs }) => rungs.includes(id)),
      );
      const sources = sourcesOf(id).filter((line) => line !== 'common practice, no source');
      expect(sources.length, id).toBe(asked.length);
      for (const [at, { text }] of asked.entries()) {
        expect(sources[at]?.startsWith(`${text} (`)).toBe(true);
      }
    }
  });

  test('the further curricula name rungs that exist', () => {
    for (const { statements } of FURTHER) {
      for (const { rungs } of statements) {
        expect(rungs.filter((rung) => rungById(rung) === null)).toEqual([]);
      }
    }
  });

  test('no rung is told the same line twice', () => {
    for (const { id } of RUNGS) expect(new Set(sourcesOf(id)).size).toBe(sourcesOf(id).length);
  });
});

test('each curriculum begins with its youngest grade', () => {
  expect(ENGLAND.grades[0]).toEqual({ id: '1', label: 'Year 1' });
  expect(CCSS.statements[0]?.text).toBe('count to 100 in ones and in tens');
  expect(CAPS.statements[0]?.text).toBe('count forwards and backwards to 100');
  expect(
    ACARA.statements.some(({ grade, rungs }) => grade === '1' && rungs.includes('clock.oclock')),
  ).toBe(false);
  expect(FURTHER[0]?.grades).toEqual([{ id: '1', label: 'Level 1' }]);
});
