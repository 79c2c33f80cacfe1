import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  daysBetween,
  isSchoolDay,
  nextSchoolDay,
  parseSchoolDay,
  type SchoolCalendar,
  schoolDaysIn,
  WEEKDAYS,
  weekdayOf,
} from '../../../drills/index.ts';
import { day } from '../support/day.ts';

const weekdaysOnly: SchoolCalendar = { weekdays: [1, 2, 3, 4, 5], breaks: [] };
const halfTerm: SchoolCalendar = {
  weekdays: [1, 2, 3, 4, 5],
  breaks: [{ first: day('2026-10-12'), last: day('2026-10-16') }],
};

describe('parseSchoolDay', () => {
  test.each([
    ['2026-02-30'],
    ['2026-02-29'],
    ['1900-02-29'],
    ['2026-00-10'],
    ['2026-13-01'],
    ['2026-04-31'],
    ['2026-01-00'],
    ['0000-01-01'],
    ['2026-1-5'],
    [' 2026-01-05'],
    ['2026-01-05T00:00'],
    ['05/01/2026'],
    [''],
  ])('%j is no school day', (text) => {
    expect(parseSchoolDay(text)).toBeNull();
  });

  test.each([['2024-02-29'], ['2000-02-29'], ['0001-01-01'], ['9999-12-31'], ['2026-12-31']])(
    '%s is a date and keeps its spelling',
    (text) => {
      expect(parseSchoolDay(text)).toBe(text);
    },
  );
});

describe('addDays and daysBetween', () => {
  test('three days after 27 February 2026 is 2 March', () => {
    expect(addDays(day('2026-02-27'), 3)).toBe('2026-03-02');
  });

  test('a negative number of days goes back over a new year', () => {
    expect(addDays(day('2026-01-01'), -1)).toBe('2025-12-31');
  });

  test('a day is never added beyond the year 9999 or before the year 1', () => {
    expect(() => addDays(day('9999-12-31'), 1)).toThrow(RangeError);
    expect(() => addDays(day('0001-01-01'), -1)).toThrow(RangeError);
  });

  test('a part of a day is refused', () => {
    expect(() => addDays(day('2026-01-01'), 0.5)).toThrow(RangeError);
  });

  test('days between are negative when the second day is the earlier one', () => {
    expect(daysBetween(day('2026-03-01'), day('2026-02-27'))).toBe(-2);
  });

  test('adding days and counting them undo each other', () => {
    const start = day('2026-01-01');
    fc.assert(
      fc.property(fc.integer({ min: -700_000, max: 2_900_000 }), (days) => {
        expect(daysBetween(start, addDays(start, days))).toBe(days);
      }),
    );
  });

  test('a later day is always spelled later', () => {
    const start = day('2026-01-01');
    fc.assert(
      fc.property(fc.nat(40_000), fc.integer({ min: 1, max: 40_000 }), (ahead, more) => {
        const earlier = addDays(start, ahead);
        expect(addDays(earlier, more) > earlier).toBe(true);
      }),
    );
  });
});

describe('weekdayOf', () => {
  test('1 January 1970 is a Thursday', () => {
    expect(weekdayOf(day('1970-01-01'))).toBe(4);
  });

  test('the seven weekdays follow one another, also before 1970', () => {
    const monday = day('1969-12-22');
    expect(WEEKDAYS.map((_, ahead) => weekdayOf(addDays(monday, ahead)))).toEqual([...WEEKDAYS]);
  });
});

describe('school days of a class', () => {
  test('a Saturday is no school day from Monday to Friday', () => {
    expect(isSchoolDay(day('2026-10-10'), weekdaysOnly)).toBe(false);
    expect(isSchoolDay(day('2026-10-09'), weekdaysOnly)).toBe(true);
  });

  test('both ends of a break belong to it', () => {
    const days = ['2026-10-11', '2026-10-12', '2026-10-16', '2026-10-19'].map(day);
    expect(days.map((each) => isSchoolDay(each, halfTerm))).toEqual([false, false, false, true]);
    expect(isSchoolDay(day('2026-10-09'), halfTerm)).toBe(true);
  });

  test('a class may practise on Sundays', () => {
    expect(isSchoolDay(day('2026-10-11'), { weekdays: [7], breaks: [] })).toBe(true);
  });

  test('the school days of a span leave out weekends and breaks and hold both ends', () => {
    expect(schoolDaysIn(day('2026-10-08'), day('2026-10-20'), halfTerm)).toEqual([
      '2026-10-08',
      '2026-10-09',
      '2026-10-19',
      '2026-10-20',
    ]);
  });

  test('a span that ends before it begins holds no school day', () => {
    expect(schoolDaysIn(day('2026-10-09'), day('2026-10-08'), weekdaysOnly)).toEqual([]);
  });

  test('the next school day is never the day itself', () => {
    expect(nextSchoolDay(day('2026-10-08'), halfTerm)).toBe('2026-10-09');
  });

  test('the next school day after a Friday before a break is the Monday after it', () => {
    expect(nextSchoolDay(day('2026-10-09'), halfTerm)).toBe('2026-10-19');
  });

  test('a class without weekdays has no next school day', () => {
    expect(nextSchoolDay(day('2026-10-09'), { weekdays: [], breaks: [] })).toBeNull();
  });

  test('the look ahead ends after 366 days', () => {
    const today = day('2026-10-09');
    const endingOn = (ahead: number): SchoolCalendar => ({
      weekdays: WEEKDAYS,
      breaks: [{ first: today, last: addDays(today, ahead) }],
    });
    expect(nextSchoolDay(today, endingOn(365))).toBe(addDays(today, 366));
    expect(nextSchoolDay(today, endingOn(366))).toBeNull();
  });
});
