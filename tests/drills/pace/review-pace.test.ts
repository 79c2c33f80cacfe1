import { describe, expect, test } from 'vitest';
import {
  addDays,
  type FamilyPace,
  type PaceLook,
  reviewPace,
  START_PACE,
  TELL_DAYS,
} from '../../../drills/index.ts';
import { announce, eveningsAWeek, lowerRate } from '../../../drills/pace/review-pace.ts';
import { evenings, MONDAY, WEEKDAYS_OF_CLASS } from '../support/pace-days.ts';

// Two school weeks of silence, Monday 7 to Friday 18 September, and the Monday after.
const SILENT = evenings(MONDAY, 10, 'silent');
const TODAY = addDays(MONDAY, 14);

function look(rest: Partial<PaceLook> = {}): PaceLook {
  return { today: TODAY, evenings: SILENT, weekdays: WEEKDAYS_OF_CLASS, told: false, ...rest };
}

const announced: FamilyPace = announce(START_PACE, TODAY);

describe('silence for two weeks', () => {
  test('is announced first, and nothing comes less often yet', () => {
    const after = reviewPace(START_PACE, look());
    expect(after).toEqual({
      ...START_PACE,
      announced: { on: TODAY, from: addDays(TODAY, 3) },
    });
    expect(after.announced?.on).toBe(TODAY);
    expect(announce(START_PACE, TODAY).announced).toEqual({ on: TODAY, from: addDays(TODAY, 3) });
  });

  test('is not announced twice', () => {
    expect(reviewPace(announced, look())).toBe(announced);
    expect(reviewPace(announced, look({ today: addDays(TODAY, 2), told: true }))).toBe(announced);
  });

  test('leads to three evenings three days after the teacher was told', () => {
    const today = addDays(TODAY, TELL_DAYS);
    expect(reviewPace(announced, look({ today, told: true }))).toEqual({
      ...START_PACE,
      rate: 'three',
      rateFrom: today,
    });
  });

  test('is announced anew when no teacher could be told in time', () => {
    const today = addDays(TODAY, TELL_DAYS);
    const after = reviewPace(announced, look({ today }));
    expect(after).toEqual(announce(START_PACE, today));
  });

  test('at three evenings takes six of them, is announced again, and leads to one', () => {
    const three: FamilyPace = { ...START_PACE, rate: 'three', rateFrom: TODAY };
    const five = [...SILENT, ...evenings(TODAY, 5, 'silent')];
    const later = addDays(TODAY, 14);
    expect(reviewPace(three, look({ today: later, evenings: five }))).toBe(three);
    const six = [...SILENT, ...evenings(TODAY, 6, 'silent')];
    const told = reviewPace(three, look({ today: later, evenings: six }));
    expect(told.announced?.on).toBe(later);
    const after = reviewPace(
      told,
      look({ today: addDays(later, TELL_DAYS), evenings: six, told: true }),
    );
    expect(after).toMatchObject({ rate: 'one', announced: null });
  });

  test('at one evening leads nowhere', () => {
    const one: FamilyPace = { ...START_PACE, rate: 'one', rateFrom: MONDAY };
    expect(reviewPace(one, look())).toBe(one);
  });
});

describe('what is no silence', () => {
  test.each<[string, readonly ReturnType<typeof evenings>[number][]]>([
    ['nine silent evenings', SILENT.slice(1)],
    [
      'an answer in the middle',
      SILENT.map((each, at) => (at === 5 ? { ...each, status: 'practised' } : each)),
    ],
    [
      '"not today" last',
      SILENT.map((each, at) => (at === 9 ? { ...each, status: 'not_today' } : each)),
    ],
    ['evenings that never arrived', evenings(MONDAY, 10, 'unsent')],
    ['no evenings at all', []],
  ])('%s', (_title, past) => {
    expect(reviewPace(START_PACE, look({ evenings: past }))).toBe(START_PACE);
  });

  test('an evening of today that is still open', () => {
    const past = [...SILENT.slice(1), { day: TODAY, status: 'silent' as const }];
    expect(reviewPace(START_PACE, look({ evenings: past }))).toBe(START_PACE);
  });

  test('what came before the family last said something about its pace', () => {
    const heard = { ...START_PACE, heard: SILENT[0]?.day ?? MONDAY };
    expect(reviewPace(heard, look())).toBe(heard);
  });

  test('what came before this rate began', () => {
    const three: FamilyPace = { ...START_PACE, rate: 'three', rateFrom: TODAY };
    expect(reviewPace(three, look({ today: addDays(TODAY, 1) }))).toBe(three);
  });
});

describe('an answer', () => {
  test('takes back what was announced', () => {
    const past = [...SILENT, { day: TODAY, status: 'practised' as const }];
    expect(reviewPace(announced, look({ evenings: past, told: true }))).toEqual(START_PACE);
  });

  test('leaves three evenings as they are: the family has not asked for more', () => {
    const three: FamilyPace = { ...START_PACE, rate: 'three', rateFrom: MONDAY };
    const past = evenings(MONDAY, 6, 'practised');
    expect(reviewPace(three, look({ evenings: past }))).toBe(three);
  });

  test('ends that the teacher keeps it daily', () => {
    const kept: FamilyPace = { ...START_PACE, kept: true, rateFrom: TODAY };
    expect(reviewPace(kept, look({ today: addDays(TODAY, 30) }))).toBe(kept);
    const past = [...SILENT, { day: TODAY, status: 'not_today' as const }];
    expect(reviewPace(kept, look({ evenings: past })).kept).toBe(false);
  });
});

test.each([
  ['a pause', { ...START_PACE, pausedUntil: addDays(TODAY, 1) }],
  ['nobody there any more', { ...START_PACE, stopped: true }],
  ['a teacher who keeps it daily', { ...START_PACE, kept: true }],
] as const)('nothing steps down with %s', (_title, pace) => {
  expect(reviewPace(pace, look({ told: true }))).toBe(pace);
});

test('a family that chose two days is silent for two weeks after four evenings, and goes straight to one', () => {
  const pace: FamilyPace = { ...START_PACE, days: [1, 3] };
  const four = SILENT.filter(({ day }) =>
    [0, 2, 7, 9].includes(SILENT.findIndex((e) => e.day === day)),
  );
  expect(four).toHaveLength(4);
  expect(reviewPace(pace, look({ evenings: four.slice(1) }))).toBe(pace);
  const told = reviewPace(pace, look({ evenings: four }));
  const today = addDays(TODAY, TELL_DAYS);
  expect(reviewPace(told, look({ evenings: four, today, told: true })).rate).toBe('one');
  expect(lowerRate(pace, WEEKDAYS_OF_CLASS)).toBe('one');
});

test('evenings a week and the next lower rate follow from the days there are', () => {
  expect(eveningsAWeek({ ...START_PACE, rate: 'three' }, WEEKDAYS_OF_CLASS)).toBe(3);
  expect(eveningsAWeek(START_PACE, WEEKDAYS_OF_CLASS)).toBe(5);
  expect(eveningsAWeek({ ...START_PACE, rate: 'three' }, [2, 4])).toBe(2);
  expect(lowerRate(START_PACE, WEEKDAYS_OF_CLASS)).toBe('three');
  expect(lowerRate(START_PACE, [1, 2, 3])).toBe('one');
  expect(lowerRate(START_PACE, [1])).toBeNull();
});
