import { describe, expect, test } from 'vitest';
import {
  canMix,
  checkPlan,
  isMixed,
  maxCardsOf,
  mixIn,
  mixKey,
  type PlanPart,
  partOf,
  RUNGS,
  type Rung,
  rungById,
  rungOfFact,
  rungsInPart,
  STRANDS,
  samePlan,
} from '../../../drills/index.ts';

const doubles: PlanPart = { rung: 'doubles.to10', cards: 10, seconds: 3 };
const mixed: PlanPart = { ...doubles, also: ['halves.to10'] };
const problemsOf = (part: PlanPart) => checkPlan({ parts: [part] });
const rungs = (...ids: string[]): Rung[] => ids.flatMap((id) => rungById(id) ?? []);

describe('mixing', () => {
  test('sums of every kind mix with each other; words, clocks and counting do not mix with them', () => {
    expect(canMix('doubles', 'halves')).toBe(true);
    expect(canMix('doubles', 'clock')).toBe(false);
    const sums = ['bonds', 'takeaway', 'doubles', 'halves', 'times'] as const;
    for (const one of STRANDS) {
      for (const other of STRANDS) {
        const both = sums.some((each) => each === one) && sums.some((each) => each === other);
        expect(canMix(one, other), `${one} ${other}`).toBe(
          both || (one === other && one !== 'counting'),
        );
      }
    }
  });

  test('a rung is mixed in once, and the cards asked stay as they are', () => {
    expect(mixIn(doubles, 'halves.to10')).toEqual(mixed);
    expect(mixIn(mixed, 'halves.to10')).toBe(mixed);
    expect(rungsInPart(mixed)).toEqual(['doubles.to10', 'halves.to10']);
  });

  test.each<[string, PlanPart, `${'clock' | 'bonds' | 'counting' | 'halves'}.${string}`]>([
    ['a clock', doubles, 'clock.half'],
    ['a counting run', doubles, 'counting.fives'],
    ['a rung that does not exist', doubles, 'bonds.to30'],
    ['a fourth rung', { ...mixed, also: ['halves.to10', 'bonds.to10'] }, 'halves.to20'],
  ])('%s cannot be mixed in', (_what, part, rung) => {
    expect(() => mixIn(part, rung)).toThrow(RangeError);
  });

  test('nothing can be mixed into a counting run, not even another one', () => {
    const run: PlanPart = { rung: 'counting.fives', cards: 10, seconds: 3 };
    expect(() => mixIn(run, 'counting.tens')).toThrow(RangeError);
    expect(problemsOf({ ...run, also: ['counting.tens'] })[0]?.kind).toBe('cannot_mix');
  });

  test('a part of one rung is not mixed, and one of none is refused', () => {
    expect(partOf(['doubles.to10'], doubles)).toEqual(doubles);
    expect(partOf(['doubles.to10', 'halves.to10'], doubles)).toEqual(mixed);
    expect(() => partOf([], doubles)).toThrow(RangeError);
  });
});

describe('a mixed part in a plan', () => {
  test('may ask for as many cards as its rungs have different facts, twenty at most', () => {
    expect(maxCardsOf({ rung: 'doubles.to5', also: ['halves.to10'] })).toBe(10);
    expect(maxCardsOf({ rung: 'doubles.to5', also: ['doubles.to10'] })).toBe(10);
    expect(maxCardsOf({ rung: 'bonds.to10', also: ['takeaway.to10'] })).toBe(20);
    expect(problemsOf({ ...mixed, rung: 'doubles.to5', cards: 11 })).toEqual([
      { part: 0, kind: 'cards', value: '11', min: 3, max: 10 },
    ]);
  });

  test('without a problem is one of two or three rungs of the same kind of task', () => {
    expect(problemsOf(mixed)).toEqual([]);
    expect(problemsOf({ ...mixed, also: ['halves.to10', 'bonds.to10'] })).toEqual([]);
  });

  test('with four rungs, a rung that does not mix, or one that does not exist says so', () => {
    const four: PlanPart = { ...mixed, also: ['halves.to10', 'bonds.to10', 'times.twos'] };
    expect(problemsOf(four)).toEqual([
      { part: 0, kind: 'too_many_mixed', value: '4', min: 1, max: 3 },
    ]);
    expect(problemsOf({ ...doubles, also: ['clock.half'] })).toEqual([
      { part: 0, kind: 'cannot_mix', value: 'clock.half', min: 0, max: 0 },
    ]);
    expect(problemsOf({ ...doubles, also: ['halves.to30'] })).toEqual([
      { part: 0, kind: 'unknown_rung', value: 'halves.to30', min: 0, max: 0 },
    ]);
  });

  test('practises no rung that another part or itself has already', () => {
    const twice = { part: 1, kind: 'same_rung_twice', value: 'halves.to10', min: 0, max: 0 };
    const halves: PlanPart = { rung: 'halves.to10', cards: 5, seconds: 3 };
    expect(checkPlan({ parts: [mixed, halves] })).toEqual([twice]);
    expect(checkPlan({ parts: [halves, mixed] })).toEqual([twice]);
    expect(problemsOf({ ...mixed, also: ['doubles.to10'] })).toEqual([
      { ...twice, part: 0, value: 'doubles.to10' },
    ]);
  });

  test('is the same plan whatever object it is in, and another one in another order or size', () => {
    const plan = { parts: [mixed] };
    expect(samePlan(plan, structuredClone(plan))).toBe(true);
    expect(samePlan(plan, { parts: [doubles] })).toBe(false);
    expect(samePlan(plan, { parts: [{ ...mixed, cards: 9 }] })).toBe(false);
    expect(samePlan({ parts: [] }, { parts: [] })).toBe(true);
  });

  test('has a key that does not depend on the order of its rungs', () => {
    expect(mixKey(mixed)).toBe('doubles.to10+halves.to10');
    expect(mixKey({ rung: 'halves.to10', also: ['doubles.to10'] })).toBe(mixKey(mixed));
    expect(isMixed(mixKey(mixed))).toBe(true);
    expect(RUNGS.filter(({ id }) => isMixed(id))).toEqual([]);
  });
});

test('a fact belongs to the first rung that has it, and to none that has not', () => {
  expect(rungOfFact(rungs('doubles.to10', 'halves.to10'), 'half:8')?.id).toBe('halves.to10');
  expect(rungOfFact(rungs('bonds.to20', 'bonds.to10'), 'add:3+4')?.id).toBe('bonds.to20');
  expect(rungOfFact(rungs('counting.fives'), 'next:5+5')).toBeNull();
});
