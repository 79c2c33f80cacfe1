import { expect, test } from 'vitest';
import { RUNGS, STRANDS } from '../../../drills/index.ts';
import { CLOCK_RUNGS } from '../../../drills/ladder/clock-rungs.ts';
import { FACT_RUNGS, TIMES_RUNGS } from '../../../drills/ladder/fact-rungs.ts';
import { RUN_RUNGS } from '../../../drills/ladder/run-rungs.ts';
import { BOND_RUNGS, TAKE_AWAY_RUNGS } from '../../../drills/ladder/sum-rungs.ts';

test('each list of rungs begins with its easiest', () => {
  expect(STRANDS[0]).toBe('words');
  expect(RUNGS[0]?.id).toBe('words.to20');
  expect(FACT_RUNGS[0]?.id).toBe('words.to20');
  expect(BOND_RUNGS[0]?.id).toBe('bonds.within5');
  expect(TAKE_AWAY_RUNGS[0]?.id).toBe('takeaway.within5');
  expect(CLOCK_RUNGS[0]?.title).toBe('clock (o\u2019clock)');
  expect(RUN_RUNGS[0]?.id).toBe('counting.onesback20');
  expect(TIMES_RUNGS[0]?.facts[2]).toBe('times:3x2');
});
