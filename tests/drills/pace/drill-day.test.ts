import { describe, expect, test } from 'vitest';
import {
  addDays,
  drillDay,
  drillWeekdays,
  type FamilyPace,
  isPaused,
  mayPrompt,
  paceStand,
  START_PACE,
  usualWeekdays,
} from '../../../drills/index.ts';
import { spread } from '../../../drills/pace/drill-day.ts';
import {
  CALENDAR,
  FRIDAY,
  MONDAY,
  THURSDAY,
  TUESDAY,
  WEDNESDAY,
  WEEKDAYS_OF_CLASS,
} from '../support/pace-days.ts';

const WEEK = [MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY];
const three: FamilyPace = { ...START_PACE, rate: 'three' };
const one: FamilyPace = { ...START_PACE, rate: 'one' };

/** The days of a week on which the drill comes, played day by day. */
function daysOf(pace: FamilyPace, calendar: Parameters<typeof drillDay>[1]['calendar'] = CALENDAR) {
  const came: typeof WEEK = [];
  for (let ahead = 0; ahead < 7; ahead += 1) {
    const day = addDays(MONDAY, ahead);
    if (drillDay(pace, { day, calendar, cameThisWeek: came.length }) === 'comes') came.push(day);
  }
  return came;
}

describe('the drill comes', () => {
  test('every school day, spread over three of them, or on the first', () => {
    expect(daysOf(START_PACE)).toEqual(WEEK);
    expect(daysOf(three)).toEqual([MONDAY, WEDNESDAY, FRIDAY]);
    expect(daysOf(one)).toEqual([MONDAY]);
  });

  test('over what a holiday leaves of a week', () => {
    const calendar = { ...CALENDAR, breaks: [{ first: MONDAY, last: MONDAY }] };
    expect(daysOf(three, calendar)).toEqual([TUESDAY, THURSDAY, FRIDAY]);
    expect(daysOf(one, calendar)).toEqual([TUESDAY]);
  });

  test('on the days the family chose, and on no others', () => {
    expect(daysOf({ ...START_PACE, days: [2, 4] })).toEqual([TUESDAY, THURSDAY]);
    expect(daysOf({ ...one, days: [2, 4] })).toEqual([TUESDAY]);
    const asked = { day: MONDAY, calendar: CALENDAR, cameThisWeek: 0 };
    expect(drillDay({ ...START_PACE, days: [2, 4] }, asked)).toBe('other_day');
    expect(drillDay(three, { day: TUESDAY, calendar: CALENDAR, cameThisWeek: 1 })).toBe(
      'other_day',
    );
  });

  test('on all of the class’s days when it has none of the chosen ones any more', () => {
    const pace = { ...START_PACE, days: [6] as const };
    expect(daysOf(pace)).toEqual(WEEK);
    expect(drillWeekdays(pace, WEEKDAYS_OF_CLASS)).toEqual(WEEKDAYS_OF_CLASS);
    expect(drillWeekdays({ ...START_PACE, days: [1, 3] }, WEEKDAYS_OF_CLASS)).toEqual([1, 3]);
  });

  test('from the day on with which a pause ends', () => {
    const pace = { ...START_PACE, pausedUntil: WEDNESDAY };
    expect(daysOf(pace)).toEqual([WEDNESDAY, THURSDAY, FRIDAY]);
    expect(daysOf({ ...one, pausedUntil: WEDNESDAY })).toEqual([WEDNESDAY]);
    expect(isPaused(pace, TUESDAY)).toBe(true);
    expect(isPaused(pace, WEDNESDAY)).toBe(false);
    expect(isPaused({ ...START_PACE, pausedUntil: MONDAY }, MONDAY)).toBe(false);
  });
});

test('it never comes more often than said, however many came before', () => {
  const asked = { day: FRIDAY, calendar: CALENDAR };
  expect(drillDay(three, { ...asked, cameThisWeek: 3 })).toBe('other_day');
  expect(drillDay(three, { ...asked, cameThisWeek: 2 })).toBe('comes');
  expect(drillDay(one, { ...asked, day: MONDAY, cameThisWeek: 1 })).toBe('other_day');
});

test('a reason is given: nobody there before a pause, a pause before no school', () => {
  const sunday = { day: addDays(MONDAY, 6), calendar: CALENDAR, cameThisWeek: 0 };
  const paused = { ...START_PACE, pausedUntil: addDays(MONDAY, 30) };
  expect(drillDay({ ...paused, stopped: true }, sunday)).toBe('stopped');
  expect(drillDay(paused, sunday)).toBe('paused');
  expect(drillDay(START_PACE, sunday)).toBe('no_school');
});

test('an ordinary week’s days leave a pause aside', () => {
  expect(usualWeekdays(three, WEEKDAYS_OF_CLASS)).toEqual([1, 3, 5]);
  expect(usualWeekdays({ ...one, pausedUntil: FRIDAY }, [2, 4])).toEqual([2]);
});

test('items are spread evenly, the first and the last among them', () => {
  expect(spread(['mon', 'tue', 'wed', 'thu', 'fri'], 3)).toEqual(['mon', 'wed', 'fri']);
  expect(spread([1, 2, 3, 4], 3)).toEqual([1, 3, 4]);
  expect(spread([1, 2, 3, 4, 5, 6, 7], 3)).toEqual([1, 4, 7]);
  expect(spread([1, 2], 3)).toEqual([1, 2]);
  expect(spread([1, 2], 1)).toEqual([1]);
  expect(spread([], 1)).toEqual([]);
});

test('a helper may have one nudge an evening and three a week', () => {
  expect(mayPrompt({ today: 0, thisWeek: 0 })).toBe(true);
  expect(mayPrompt({ today: 0, thisWeek: 2 })).toBe(true);
  expect(mayPrompt({ today: 0, thisWeek: 3 })).toBe(false);
  expect(mayPrompt({ today: 1, thisWeek: 1 })).toBe(false);
});

test('of several things to tell about a pace the most urgent is told, and nothing of a usual one', () => {
  const announced = { on: MONDAY, from: THURSDAY };
  const stand = (pace: FamilyPace) => paceStand(pace, MONDAY, WEEKDAYS_OF_CLASS);
  expect(stand(START_PACE)).toBeNull();
  expect(stand({ ...START_PACE, days: [1] })).toEqual({ kind: 'days', days: [1] });
  expect(stand({ ...START_PACE, days: [1], kept: true })).toEqual({ kind: 'kept' });
  expect(stand({ ...three, rateFrom: MONDAY })).toEqual({
    kind: 'fewer',
    rate: 'three',
    from: MONDAY,
  });
  expect(stand({ ...three, announced })).toEqual({
    kind: 'announced',
    rate: 'one',
    from: THURSDAY,
  });
  const paused = { ...three, announced, pausedUntil: FRIDAY };
  expect(stand(paused)).toEqual({ kind: 'paused', until: FRIDAY });
  expect(paceStand(paused, FRIDAY, WEEKDAYS_OF_CLASS)?.kind).toBe('announced');
});
