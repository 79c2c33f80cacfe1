import { describe, expect, it } from 'vitest';
import { printWeek } from '../../../bot/paper/index.ts';
import { storedDay } from '../../../db/index.ts';
import type { SchoolCalendar } from '../../../drills/index.ts';

const day = storedDay;
const WEEKDAYS: SchoolCalendar = { weekdays: [1, 2, 3, 4, 5], breaks: [] };
/** The week of Monday 14 September 2026, and the one after. */
const THIS = ['14', '15', '16', '17', '18'].map((date) => `2026-09-${date}`);
const NEXT = ['21', '22', '23', '24', '25'].map((date) => `2026-09-${date}`);

describe('the days a sheet is printed for', () => {
  it.each([
    ['Monday', '2026-09-14', THIS],
    ['Thursday', '2026-09-17', THIS.slice(3)],
    ['Friday, the last school day', '2026-09-18', NEXT],
    ['Saturday', '2026-09-19', NEXT],
    ['Sunday', '2026-09-20', NEXT],
  ])('on %s', (_, today, expected) => {
    expect(printWeek(day(today), WEEKDAYS)).toEqual(expected);
  });

  it('leave out a break', () => {
    const breaks = [{ first: day('2026-09-16'), last: day('2026-09-17') }];
    expect(printWeek(day('2026-09-14'), { ...WEEKDAYS, breaks })).toEqual([
      '2026-09-14',
      '2026-09-15',
      '2026-09-18',
    ]);
  });

  it('are today alone when next week is a break', () => {
    const breaks = [{ first: day('2026-09-19'), last: day('2026-10-02') }];
    expect(printWeek(day('2026-09-18'), { ...WEEKDAYS, breaks })).toEqual(['2026-09-18']);
  });

  it('are none in the middle of a long break', () => {
    const breaks = [{ first: day('2026-09-01'), last: day('2026-09-30') }];
    expect(printWeek(day('2026-09-14'), { ...WEEKDAYS, breaks })).toEqual([]);
  });
});
