import { describe, expect, test } from 'vitest';
import {
  addDays,
  chooseDrillDay,
  everySchoolDay,
  type FamilyPace,
  familyJoins,
  familyStops,
  keepDaily,
  letGo,
  pauseDrill,
  pauseProblem,
  START_PACE,
  startAgain,
} from '../../../drills/index.ts';
import { FRIDAY, MONDAY, WEEKDAYS_OF_CLASS } from '../support/pace-days.ts';

const NEXT_MONDAY = addDays(MONDAY, 7);
const announced = { on: MONDAY, from: addDays(MONDAY, 3) };
const three: FamilyPace = { ...START_PACE, rate: 'three', rateFrom: MONDAY };

describe('a pause', () => {
  test('ends on the day it names, and takes back what was announced or kept', () => {
    expect(pauseDrill({ ...START_PACE, announced }, NEXT_MONDAY, FRIDAY)).toEqual({
      ...START_PACE,
      heard: FRIDAY,
      pausedUntil: NEXT_MONDAY,
    });
    expect(pauseDrill({ ...START_PACE, kept: true }, NEXT_MONDAY, FRIDAY).kept).toBe(false);
  });

  test('leaves fewer evenings as they are', () => {
    expect(pauseDrill(three, NEXT_MONDAY, FRIDAY)).toMatchObject({ rate: 'three' });
  });

  test('can end tomorrow at the earliest and in 120 days at the latest', () => {
    expect(pauseProblem(FRIDAY, FRIDAY)).toBe('past');
    expect(pauseProblem(MONDAY, FRIDAY)).toBe('past');
    expect(pauseProblem(addDays(FRIDAY, 1), FRIDAY)).toBeNull();
    expect(pauseProblem(addDays(FRIDAY, 120), FRIDAY)).toBeNull();
    expect(pauseProblem(addDays(FRIDAY, 121), FRIDAY)).toBe('far');
  });

  test('is ended by one tap; without one, or after it, the tap changes nothing', () => {
    const paused = pauseDrill(START_PACE, NEXT_MONDAY, FRIDAY);
    expect(startAgain(paused, FRIDAY)).toEqual({ ...START_PACE, heard: FRIDAY });
    expect(startAgain(START_PACE, FRIDAY)).toBe(START_PACE);
    expect(startAgain(paused, NEXT_MONDAY)).toBe(paused);
  });
});

describe('choosing days', () => {
  const choose = (pace: FamilyPace, weekday: 1 | 3 | 5 | 6, on: boolean) =>
    chooseDrillDay(pace, { weekday, on, ofClass: [1, 3, 5], today: FRIDAY });

  test('takes one out and in again, and all of them are no choice', () => {
    const without = choose(START_PACE, 5, false);
    expect(without?.days).toEqual([1, 3]);
    expect(without && choose(without, 5, true)?.days).toBeNull();
  });

  test('never takes the last one out', () => {
    expect(choose({ ...START_PACE, days: [3] }, 3, false)).toBeNull();
  });

  test('a tap that comes twice, and a day without school, change nothing', () => {
    const only = { ...START_PACE, days: [1] as const };
    expect(choose(only, 5, false)).toBe(only);
    expect(choose(START_PACE, 1, true)).toBe(START_PACE);
    expect(choose(START_PACE, 6, true)).toBe(START_PACE);
  });

  test('whoever chooses gets exactly these days, also after silence', () => {
    expect(choose({ ...three, announced }, 1, false)).toEqual({
      ...START_PACE,
      heard: FRIDAY,
      days: [3, 5],
    });
  });
});

describe('every school day', () => {
  test.each<FamilyPace>([
    three,
    { ...START_PACE, rate: 'one' },
    { ...START_PACE, days: [2] },
    { ...START_PACE, announced },
  ])('comes back at once by one tap from %j', (pace) => {
    expect(everySchoolDay(pace, FRIDAY)).toEqual({ ...START_PACE, heard: FRIDAY });
  });

  test('leaves a pause as it is, and says nothing new where it is so already', () => {
    const paused = { ...three, pausedUntil: NEXT_MONDAY };
    expect(everySchoolDay(paused, FRIDAY).pausedUntil).toBe(NEXT_MONDAY);
    expect(everySchoolDay(START_PACE, FRIDAY)).toBe(START_PACE);
  });
});

describe('the teacher', () => {
  test('keeps it daily before and after it came less often', () => {
    const kept = { ...START_PACE, kept: true, rateFrom: FRIDAY };
    expect(keepDaily({ ...START_PACE, announced }, FRIDAY)).toEqual(kept);
    expect(keepDaily(three, FRIDAY)).toEqual(kept);
    expect(keepDaily(kept, addDays(FRIDAY, 3))).toBe(kept);
    expect(keepDaily(START_PACE, FRIDAY)).toBe(START_PACE);
  });

  test('never touches what the family chose', () => {
    const paused = { ...three, days: [1, 3] as const, pausedUntil: NEXT_MONDAY };
    expect(keepDaily(paused, FRIDAY)).toMatchObject({ days: [1, 3], pausedUntil: NEXT_MONDAY });
  });

  test('lets it go: announced again from today, and nothing where it is not kept', () => {
    const kept = keepDaily(three, FRIDAY);
    expect(letGo(kept, NEXT_MONDAY)).toEqual({
      ...START_PACE,
      announced: { on: NEXT_MONDAY, from: addDays(NEXT_MONDAY, 3) },
    });
    expect(letGo({ ...START_PACE, kept: true }, FRIDAY).announced?.on).toBe(FRIDAY);
    expect(letGo(three, FRIDAY)).toBe(three);
  });
});

test('a family that stopped starts afresh when somebody joins; one that is there goes on as it is', () => {
  const before = { ...three, days: [2] as const, pausedUntil: NEXT_MONDAY };
  expect(familyJoins(familyStops(before), FRIDAY)).toEqual({ ...START_PACE, heard: FRIDAY });
  expect(familyJoins({ ...START_PACE, stopped: true, rate: 'one' }, FRIDAY).rate).toBe('daily');
  expect(familyJoins(before, FRIDAY)).toBe(before);
});

test('examples: a pause until Monday and its end', () => {
  expect(pauseDrill(START_PACE, NEXT_MONDAY, FRIDAY).pausedUntil).toBe(NEXT_MONDAY);
  expect(startAgain({ ...START_PACE, pausedUntil: NEXT_MONDAY }, FRIDAY).pausedUntil).toBeNull();
  expect(everySchoolDay({ ...START_PACE, rate: 'one' }, FRIDAY).rate).toBe('daily');
  expect(WEEKDAYS_OF_CLASS).toHaveLength(5);
});
