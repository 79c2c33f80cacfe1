import { describe, expect, test } from 'vitest';
import { askedOnRung } from '../../../drills/digest/rung-memory.ts';
import { type FactId, next, type RungId, rebuildMemory, rungById } from '../../../drills/index.ts';
import { FRIDAY } from '../support/week.ts';

/** How many of these facts, each asked once, count as memory of a rung. */
function countOn(id: RungId, ...facts: FactId[]): number {
  const rung = rungById(id);
  if (rung === null) throw new Error(`no such rung: ${id}`);
  const marks = facts.map((fact) => ({ fact, day: FRIDAY, right: true, way: 'card' as const }));
  return askedOnRung(rung, rebuildMemory(marks)).length;
}

describe('memory of a rung with cards', () => {
  test('is that of its own facts, whichever rung they were asked on', () => {
    expect(countOn('bonds.to10', 'add:1+1', 'add:6+3', 'add:6+6', 'sub:6-3')).toBe(2);
  });

  test('leaves out what was only lent by a relative', () => {
    expect(countOn('bonds.to10', 'add:2+3')).toBe(1);
  });
});

describe('memory of a counting rung', () => {
  test('is that of its own stride and direction', () => {
    expect(countOn('counting.tens', next(20, 10), next(20, 5), next(20, -10), 'add:2+3')).toBe(1);
  });

  test('stays within its limit', () => {
    expect(countOn('counting.fives100', next(95, 5), next(100, 5))).toBe(1);
    expect(countOn('counting.fives', next(95, 5), next(100, 5), next(200, 5))).toBe(2);
  });

  test('on the tens is not that off the tens', () => {
    expect(countOn('counting.tens', next(20, 10), next(23, 10))).toBe(1);
  });
});
