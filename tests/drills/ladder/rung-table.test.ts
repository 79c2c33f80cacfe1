import { describe, expect, test } from 'vitest';
import { familyOf } from '../../../drills/facts/near-twin.ts';
import { difficultyOf, hasNought, RUNGS, rungById, rungTable } from '../../../drills/index.ts';

const FACT_RUNGS = RUNGS.flatMap((rung) => (rung.kind === 'facts' ? [rung] : []));

describe('rungTable', () => {
  test('doubles to 5 + 5 begins with double 1', () => {
    const rung = rungById('doubles.to5');
    if (rung?.kind !== 'facts') throw new Error('doubles.to5 has facts');
    expect(rungTable(rung)[0]).toEqual({
      fact: 'double:1',
      family: '1&1',
      hasNought: false,
      difficulty: 1,
    });
  });

  test.each(FACT_RUNGS)('$id lists its own facts with what is true of each', (rung) => {
    const expected = rung.facts.map((fact) => ({
      fact,
      family: familyOf(fact),
      hasNought: hasNought(fact),
      difficulty: difficultyOf(fact),
    }));
    expect(rungTable(rung)).toEqual(expected);
  });

  test('it is worked out once for each rung', () => {
    for (const rung of FACT_RUNGS) expect(rungTable(rung)).toBe(rungTable(rung));
  });

  test('another set under the same id has a table of its own', () => {
    const rung = rungById('doubles.to5');
    if (rung?.kind !== 'facts') throw new Error('doubles.to5 has facts');
    const smaller = { ...rung, facts: rung.facts.slice(0, 2) };
    expect(rungTable(smaller).map(({ fact }) => fact)).toEqual(['double:1', 'double:2']);
  });
});
