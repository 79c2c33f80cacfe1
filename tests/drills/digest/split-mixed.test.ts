import { describe, expect, test } from 'vitest';
import { growthOf } from '../../../drills/digest/growth.ts';
import { type DayScores, isMixed, type PartScore, splitMixed } from '../../../drills/index.ts';
import { day } from '../support/day.ts';
import { child, practised, WEEK } from '../support/week.ts';

const blueprint = 'doubles.to10+halves.to10|4';
const marks = [
  { fact: 'double:6', right: true },
  { fact: 'half:8', right: false },
  { fact: 'double:7', right: false },
  { fact: 'half:4', right: true },
] as const;

describe('the score of a mixed part', () => {
  test('is one for each of its rungs, each of its own strand', () => {
    expect(splitMixed({ blueprint, marks })).toEqual([
      { strand: 'doubles', rung: 'doubles.to10', right: 1, asked: 2, mixed: blueprint },
      { strand: 'halves', rung: 'halves.to10', right: 1, asked: 2, mixed: blueprint },
    ]);
  });

  test('has none for a rung without a card, and none at all without marks', () => {
    const rungs = splitMixed({ blueprint, marks: marks.slice(1, 2) }).map(({ rung }) => rung);
    expect(rungs).toEqual(['halves.to10']);
    expect(splitMixed({ blueprint, marks: [] })).toEqual([]);
  });

  test('counts a fact that two of its rungs have for the easier one, once', () => {
    const both = {
      blueprint: 'bonds.to10+bonds.to20|1',
      marks: [{ fact: 'add:3+4', right: true }],
    };
    expect(splitMixed({ ...both, marks: [{ fact: 'add:3+4', right: true }] })).toEqual([
      { strand: 'bonds', rung: 'bonds.to10', right: 1, asked: 1, mixed: both.blueprint },
    ]);
  });

  test('leaves out what this release does not have', () => {
    expect(splitMixed({ blueprint: 'bonds.gone+bonds.lost|1', marks })).toEqual([]);
  });

  test('is told from any other by its blueprint', () => {
    expect(isMixed(blueprint)).toBe(true);
    expect(isMixed('doubles.to10|4')).toBe(false);
  });
});

describe('growth over mixed parts', () => {
  const on = (at: number) => day(`2026-08-${String(17 + at).padStart(2, '0')}`);
  const mixedDay = (right: number): PartScore[] => [
    { strand: 'doubles', rung: 'doubles.to10', right, asked: 10, mixed: 'a+b|20' },
    { strand: 'halves', rung: 'halves.to10', right: 10 - right, asked: 10, mixed: 'a+b|20' },
  ];
  const earlier: DayScores[] = [1, 2, 3, 4, 5, 6, 7].map((right, at) => ({
    day: on(at),
    parts: mixedDay(right),
  }));
  const wren = child(1, { evenings: [practised(0, { parts: mixedDay(9) })], earlier });

  test('compares the strand’s own cards of the same mixture', () => {
    expect(growthOf(wren, 'doubles', WEEK).trend).toBe('rising');
    expect(growthOf(wren, 'halves', WEEK).trend).toBe('falling');
    expect(growthOf(wren, 'doubles', WEEK).evenings).toBe(8);
  });

  test('never compares a mixture with its rungs kept apart', () => {
    const apart = earlier.map(({ day: each, parts }) => ({
      day: each,
      parts: parts.map(({ mixed: _, ...score }) => score),
    }));
    expect(growthOf({ ...wren, earlier: apart }, 'doubles', WEEK).evenings).toBe(1);
  });

  test('adds up two rungs of one strand in one mixture', () => {
    const two = (right: number): PartScore[] => [
      { strand: 'doubles', rung: 'doubles.to5', right: 1, asked: 2, mixed: 'a+b|4' },
      { strand: 'doubles', rung: 'doubles.to10', right, asked: 2, mixed: 'a+b|4' },
    ];
    const otter = child(2, {
      evenings: [practised(0, { parts: two(2) })],
      earlier: earlier.map((each) => ({ ...each, parts: two(2) })),
    });
    expect(growthOf(otter, 'doubles', WEEK)).toEqual({ trend: 'steady', evenings: 8, aWeek: 0 });
  });
});
