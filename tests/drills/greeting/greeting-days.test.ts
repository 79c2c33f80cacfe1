import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  type GreetingTimes,
  greetingChoices,
  isGreetingDue,
  isSchoolDay,
  NO_LAST_DAY,
  nextSchoolDay,
  type SchoolCalendar,
  type SchoolDay,
  usualDays,
  WEEKDAYS,
  weekdayOf,
} from '../../../drills/index.ts';
import { day } from '../support/day.ts';

const MONDAY = day('2026-09-14');
const WEDNESDAY = day('2026-09-16');
const THURSDAY = day('2026-09-17');
const FRIDAY = day('2026-09-18');
const SUNDAY = day('2026-09-20');
const NEXT_MONDAY = day('2026-09-21');
const NEXT_SUNDAY = day('2026-09-27');
const WEEK: SchoolCalendar = { weekdays: [1, 2, 3, 4, 5], breaks: [] };

describe('the days a greeting can be given', () => {
  test('this week runs from the next evening to Sunday, next week from its first school day', () => {
    expect(greetingChoices(WEDNESDAY, WEEK)).toEqual({
      thisWeek: { first: WEDNESDAY, last: SUNDAY },
      nextWeek: { first: NEXT_MONDAY, last: NEXT_SUNDAY },
      kept: { first: WEDNESDAY, last: NO_LAST_DAY },
    });
  });

  test('a week that is a break is passed over', () => {
    const breaks = [{ first: NEXT_MONDAY, last: NEXT_SUNDAY }];
    expect(greetingChoices(WEDNESDAY, { ...WEEK, breaks }).nextWeek).toEqual({
      first: day('2026-09-28'),
      last: day('2026-10-04'),
    });
  });

  test('without a school day to come there is no next week', () => {
    expect(greetingChoices(WEDNESDAY, { weekdays: [], breaks: [] }).nextWeek).toBeNull();
  });
});

describe('the usual days of a new greeting', () => {
  test('are this week while one more school day of it follows', () => {
    expect(usualDays(MONDAY, WEEK)).toEqual({ first: MONDAY, last: SUNDAY });
    expect(usualDays(THURSDAY, WEEK).first).toBe(THURSDAY);
  });

  test('are next week on the last school day of a week', () => {
    expect(usualDays(FRIDAY, WEEK)).toEqual({ first: NEXT_MONDAY, last: NEXT_SUNDAY });
  });

  test('are this week where the week has one school day only', () => {
    expect(usualDays(FRIDAY, { weekdays: [5], breaks: [] }).first).toBe(FRIDAY);
  });
});

describe('whether a greeting is due', () => {
  const once: GreetingTimes = { evenings: 'first', first: MONDAY, last: SUNDAY };
  const every: GreetingTimes = { ...once, evenings: 'every' };
  const kept: GreetingTimes = { ...once, last: NO_LAST_DAY };

  test('with a family’s first evening of the week, whichever day that is', () => {
    expect(isGreetingDue(once, MONDAY, null)).toBe(true);
    expect(isGreetingDue(once, WEDNESDAY, null)).toBe(true);
    expect(isGreetingDue(once, WEDNESDAY, MONDAY)).toBe(false);
  });

  test('one of another week or of an earlier greeting does not count', () => {
    expect(isGreetingDue(once, MONDAY, addDays(MONDAY, -3))).toBe(true);
    expect(isGreetingDue({ ...once, first: WEDNESDAY }, WEDNESDAY, MONDAY)).toBe(true);
  });

  test('with every evening, on each of its days', () => {
    expect(isGreetingDue(every, FRIDAY, THURSDAY)).toBe(true);
  });

  test('never before its first or after its last day', () => {
    expect(isGreetingDue(every, addDays(MONDAY, -1), null)).toBe(false);
    expect(isGreetingDue(every, NEXT_MONDAY, null)).toBe(false);
  });

  test('one that is kept comes again with the next week', () => {
    expect(isGreetingDue(kept, NEXT_MONDAY, MONDAY)).toBe(true);
    expect(isGreetingDue(kept, FRIDAY, MONDAY)).toBe(false);
  });

  test('a family that gets it whenever it is due gets it once a week at most, or on every evening', () => {
    const anyCalendar = fc
      .subarray([...WEEKDAYS], { minLength: 1 })
      .map((weekdays): SchoolCalendar => ({ weekdays, breaks: [] }));
    fc.assert(
      fc.property(
        anyCalendar,
        fc.integer({ min: 0, max: 13 }),
        fc.boolean(),
        (calendar, at, all) => {
          const first = nextSchoolDay(addDays(MONDAY, at - 1), calendar) ?? MONDAY;
          const times: GreetingTimes = {
            evenings: all ? 'every' : 'first',
            first,
            last: NO_LAST_DAY,
          };
          const got = daysGot(times, calendar);
          const weeks = got.map((each) => addDays(each, 1 - weekdayOf(each)));
          expect(got[0]).toBe(first);
          if (all) expect(got).toEqual(evenings(calendar).filter((each) => each >= first));
          else expect(new Set(weeks).size).toBe(weeks.length);
        },
      ),
    );
  });
});

function evenings(calendar: SchoolCalendar): SchoolDay[] {
  return Array.from({ length: 35 }, (_, ahead) => addDays(MONDAY, ahead)).filter((each) =>
    isSchoolDay(each, calendar),
  );
}

function daysGot(times: GreetingTimes, calendar: SchoolCalendar): SchoolDay[] {
  const got: SchoolDay[] = [];
  for (const each of evenings(calendar)) {
    if (isGreetingDue(times, each, got.at(-1) ?? null)) got.push(each);
  }
  return got;
}
