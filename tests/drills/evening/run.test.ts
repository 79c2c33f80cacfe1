import { describe, expect, test } from 'vitest';
import {
  askedOf,
  blueprintOf,
  type DrillPart,
  type RunPart,
  runNumbers,
} from '../../../drills/index.ts';

const fives: RunPart = {
  kind: 'run',
  strand: 'counting',
  rung: 'counting.fives',
  seconds: 3,
  start: 35,
  step: 5,
  length: 4,
};

const doubles: DrillPart = {
  kind: 'facts',
  strand: 'doubles',
  rung: 'doubles.to5',
  seconds: 3,
  cards: ['double:1', 'double:2', 'double:3'],
};

describe('runNumbers', () => {
  test('four numbers in fives from 35 end at 50', () => {
    expect(runNumbers(fives)).toEqual([35, 40, 45, 50]);
  });

  test('a negative step counts back', () => {
    expect(runNumbers({ ...fives, start: 3, step: -1 })).toEqual([3, 2, 1, 0]);
  });
});

describe('the size of a part', () => {
  test('it is the number of cards, or of numbers to say', () => {
    expect(askedOf(doubles)).toBe(3);
    expect(askedOf(fives)).toBe(4);
  });

  test('a blueprint is the rung and the size', () => {
    expect(blueprintOf(doubles)).toBe('doubles.to5|3');
    expect(blueprintOf({ ...fives, length: 10 })).toBe('counting.fives|10');
  });

  test('where a run starts makes no difference to its blueprint', () => {
    expect(blueprintOf({ ...fives, start: 0 })).toBe(blueprintOf(fives));
  });
});
