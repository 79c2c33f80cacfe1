import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  isSchoolDay,
  monthDue,
  monthOfDay,
  type SchoolCalendar,
  schoolDaysIn,
  termStart,
} from '../../../drills/index.ts';
import { day } from '../support/day.ts';

const WEEK: SchoolCalendar = { weekdays: [1, 2, 3, 4, 5], breaks: [] };
const someDay = fc.integer({ min: 0, max: 1500 }).map((days) => addDays(day('2024-01-01'), days));
const someCalendar = fc.record({
  weekdays: fc.subarray([1, 2, 3, 4, 5] as const, { minLength: 1 }),
  breaks: fc.array(
    fc.tuple(someDay, fc.integer({ min: 0, max: 40 })).map(([first, days]) => ({
      first,
      last: addDays(first, days),
    })),
    { maxLength: 4 },
  ),
});

describe('a month', () => {
  it('ends on the day the calendar says, in a leap year and over New Year', () => {
    expect(monthOfDay(day('2026-02-11'))).toEqual({
      first: day('2026-02-01'),
      last: day('2026-02-28'),
    });
    expect(monthOfDay(day('2028-02-29')).last).toBe(day('2028-02-29'));
    expect(monthOfDay(day('2026-12-31')).last).toBe(day('2026-12-31'));
  });

  it('is closed by its last school day, also before a weekend and before a break', () => {
    expect(monthDue(day('2026-10-30'), WEEK)?.first).toBe(day('2026-10-01'));
    expect(monthDue(day('2026-10-29'), WEEK)).toBeNull();
    const christmas = { first: day('2026-12-12'), last: day('2027-01-05') };
    expect(monthDue(day('2026-12-11'), { ...WEEK, breaks: [christmas] })?.first).toBe(
      day('2026-12-01'),
    );
  });

  it('is closed by the first days of the next one, for who missed its last evening, and no later', () => {
    expect(monthDue(day('2026-11-02'), WEEK)?.first).toBe(day('2026-10-01'));
    expect(monthDue(day('2026-11-06'), WEEK)?.first).toBe(day('2026-10-01'));
    expect(monthDue(day('2026-11-09'), WEEK)).toBeNull();
  });

  it('is the one of the day or the one before, whatever the calendar', () => {
    fc.assert(
      fc.property(someDay, someCalendar, (on, calendar) => {
        const due = monthDue(on, calendar);
        if (due === null) return;
        const own = monthOfDay(on);
        expect([own.first, monthOfDay(addDays(own.first, -1)).first]).toContain(due.first);
      }),
    );
  });

  it('is closed by its last school day in every calendar that has school in it and within a year after', () => {
    fc.assert(
      fc.property(someDay, someCalendar, (on, calendar) => {
        const { first, last } = monthOfDay(on);
        const closing = schoolDaysIn(first, last, calendar).at(-1);
        fc.pre(closing !== undefined);
        if (closing) expect(monthDue(closing, calendar)?.first).toBe(first);
      }),
    );
  });
});

describe('a term', () => {
  const weeks = (first: string, last: string) => ({ first: day(first), last: day(last) });

  it('begins after the latest break of ten days or more that is over', () => {
    const breaks = [weeks('2026-07-18', '2026-09-01'), weeks('2026-12-12', '2027-01-04')];
    expect(termStart(day('2026-11-04'), breaks)).toBe(day('2026-09-02'));
    expect(termStart(day('2027-01-04'), breaks)).toBe(day('2026-09-02'));
    expect(termStart(day('2027-01-05'), breaks)).toBe(day('2027-01-05'));
  });

  it('is not cut by a half term of nine days, nor by a day off', () => {
    const breaks = [weeks('2026-10-24', '2026-11-01'), weeks('2026-11-20', '2026-11-20')];
    expect(termStart(day('2026-11-25'), breaks)).toBeNull();
    expect(termStart(day('2026-11-25'), [weeks('2026-10-24', '2026-11-02')])).toBe(
      day('2026-11-03'),
    );
  });

  it('never begins after the day asked about, so a count since then holds that day', () => {
    fc.assert(
      fc.property(someDay, someCalendar, (on, { breaks }) => {
        const start = termStart(on, breaks);
        if (start !== null) expect(start <= on).toBe(true);
      }),
    );
  });

  it('has a beginning that stays while the term goes on: a count in it never falls', () => {
    fc.assert(
      fc.property(someDay, someCalendar, (on, calendar) => {
        const next = addDays(on, 1);
        fc.pre(isSchoolDay(on, calendar));
        const [start, later] = [termStart(on, calendar.breaks), termStart(next, calendar.breaks)];
        // It moves only where a long break ended on that very day, which was no school day then.
        expect(later).toBe(start);
      }),
    );
  });
});
