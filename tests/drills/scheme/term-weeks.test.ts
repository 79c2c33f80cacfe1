import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  isSchoolDay,
  mondayOf,
  type SchoolCalendar,
  schoolDayBefore,
  schoolDaysIn,
  shiftedStart,
  weekOf,
  weekStarts,
} from '../../../drills/index.ts';
import { day } from '../support/day.ts';

const MONDAY = day('2026-09-14');
const WEDNESDAY = day('2026-09-16');
const weekdays = [1, 2, 3, 4, 5] as const;
const always: SchoolCalendar = { weekdays, breaks: [] };
const HALF_TERM = { first: day('2026-10-26'), last: day('2026-10-30') };
const withHalfTerm: SchoolCalendar = { weekdays, breaks: [HALF_TERM] };

const anyCalendar: fc.Arbitrary<SchoolCalendar> = fc.record({
  weekdays: fc.subarray([1, 2, 3, 4, 5, 6, 7] as const, { minLength: 1 }),
  breaks: fc.array(
    fc
      .tuple(fc.integer({ min: -20, max: 140 }), fc.integer({ min: 0, max: 30 }))
      .map(([from, days]) => ({
        first: addDays(MONDAY, from),
        last: addDays(MONDAY, from + days),
      })),
    { maxLength: 4 },
  ),
});
const anyDay = fc.integer({ min: 0, max: 150 }).map((days) => addDays(MONDAY, days));

describe('the week of a term', () => {
  test('is 1 in the week it begins, from whatever day of it, and goes on by calendar weeks', () => {
    expect(weekOf(WEDNESDAY, always, MONDAY)).toBe(1);
    expect(weekOf(WEDNESDAY, always, addDays(MONDAY, 6))).toBe(1);
    expect(weekOf(WEDNESDAY, always, addDays(MONDAY, 7))).toBe(2);
  });

  test('is none before the term begins', () => {
    expect(weekOf(MONDAY, always, addDays(MONDAY, -1))).toBeNull();
    expect(weekOf(MONDAY, always, addDays(MONDAY, -70))).toBeNull();
  });

  test('is none in a week without school, and the next week has the number this one would have', () => {
    expect(weekOf(MONDAY, always, HALF_TERM.first)).toBe(7);
    expect(weekOf(MONDAY, withHalfTerm, HALF_TERM.first)).toBeNull();
    expect(weekOf(MONDAY, withHalfTerm, addDays(HALF_TERM.first, 7))).toBe(7);
  });

  test('with a single school day is a week', () => {
    const almost = { first: HALF_TERM.first, last: addDays(HALF_TERM.last, -1) };
    expect(weekOf(MONDAY, { weekdays, breaks: [almost] }, HALF_TERM.first)).toBe(7);
  });

  test('does not count a first week whose school days were over before the term began', () => {
    expect(weekOf(day('2026-09-19'), always, day('2026-09-18'))).toBeNull();
    expect(weekOf(day('2026-09-19'), always, day('2026-09-21'))).toBe(1);
  });

  test('is one more with every week that has a school day, and the number of its own start', () => {
    fc.assert(
      fc.property(anyCalendar, anyDay, (calendar, on) => {
        const week = weekOf(MONDAY, calendar, on);
        const monday = mondayOf(on);
        const own = schoolDaysIn(monday, addDays(monday, 6), calendar);
        expect(week === null).toBe(own.length === 0);
        if (week === null) return;
        const starts = weekStarts(MONDAY, calendar, week);
        expect(starts.at(-1)).toBe(own[0]);
        expect(starts).toHaveLength(week);
      }),
    );
  });

  test('comes later by exactly the school weeks that a new break takes', () => {
    fc.assert(
      fc.property(
        anyCalendar,
        fc.integer({ min: 1, max: 10 }),
        fc.integer({ min: 1, max: 4 }),
        (calendar, from, length) => {
          const first = addDays(MONDAY, 7 * from);
          const added = { first, last: addDays(first, 7 * length - 1) };
          const longer = { ...calendar, breaks: [...calendar.breaks, added] };
          const before = weekStarts(MONDAY, calendar, 30);
          const lost = before.filter((start) => added.first <= start && start <= added.last).length;
          const after = weekStarts(MONDAY, longer, 30 - lost);
          expect(after).toEqual(before.filter((start) => start < first || start > added.last));
        },
      ),
    );
  });
});

describe('the first school days of a term’s weeks', () => {
  test('are the day itself, then the first of each week', () => {
    expect(weekStarts(WEDNESDAY, always, 2)).toEqual(['2026-09-16', '2026-09-21']);
    expect(weekStarts(MONDAY, withHalfTerm, 7).at(-1)).toBe('2026-11-02');
  });

  test('end when a class has no school days any more', () => {
    expect(weekStarts(MONDAY, { weekdays: [], breaks: [] }, 3)).toEqual([]);
  });
});

describe('a term that is moved', () => {
  test('begins in the next week with school, or in the one before', () => {
    expect(shiftedStart(MONDAY, always, 1)).toBe('2026-09-21');
    expect(shiftedStart(WEDNESDAY, always, -1)).toBe('2026-09-07');
    expect(shiftedStart(day('2026-10-19'), withHalfTerm, 1)).toBe('2026-11-02');
  });

  test('stays where a class has no school days', () => {
    expect(shiftedStart(MONDAY, { weekdays: [], breaks: [] }, 1)).toBeNull();
  });

  test('later and then earlier begins in the same week as before', () => {
    fc.assert(
      fc.property(anyCalendar, anyDay, (calendar, from) => {
        if (!isSchoolDay(from, calendar)) return;
        const later = shiftedStart(from, calendar, 1);
        if (later === null) return;
        const back = shiftedStart(later, calendar, -1);
        expect(back && mondayOf(back)).toBe(mondayOf(from));
      }),
    );
  });
});

describe('the school day before', () => {
  test('is Friday before a Monday, and the last one before a break', () => {
    expect(schoolDayBefore(MONDAY, always)).toBe('2026-09-11');
    expect(schoolDayBefore(day('2026-11-02'), withHalfTerm)).toBe('2026-10-23');
  });

  test('is none where there are no school days', () => {
    expect(schoolDayBefore(MONDAY, { weekdays: [], breaks: [] })).toBeNull();
  });
});
