/*
 * The weeks of a term beside the calendar's own: ISO 8601 weeks as the Temporal API numbers them (weekOfYear and yearOfWeek of
 * TC39's proposal, by its reference-tested polyfill). Whether Monday begins a week is ISO 8601's choice and ours.
 */
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { expect, test } from 'vitest';
import { addDays, mondayOf, type SchoolCalendar, weekOf } from '../../drills/index.ts';
import { day } from '../drills/support/day.ts';

const FIRST = day('2024-01-01');
const anyDay = fc.integer({ min: 0, max: 3650 }).map((days) => addDays(FIRST, days));
const always: SchoolCalendar = { weekdays: [1, 2, 3, 4, 5], breaks: [] };
const isoWeek = (text: string) => {
  const { weekOfYear, yearOfWeek } = Temporal.PlainDate.from(text);
  return `${yearOfWeek}-W${weekOfYear}`;
};

test('a week begins on ISO 8601’s Monday', () => {
  fc.assert(
    fc.property(anyDay, (on) => {
      const monday = Temporal.PlainDate.from(mondayOf(on));
      expect(monday.dayOfWeek).toBe(1);
      expect(isoWeek(mondayOf(on))).toBe(isoWeek(on));
    }),
  );
});

test('two days are in the same week of a term exactly when they are in the same ISO week', () => {
  fc.assert(
    fc.property(anyDay, fc.nat(200), fc.nat(200), (from, one, other) => {
      const monday = mondayOf(from);
      const [a, b] = [addDays(monday, one), addDays(monday, other)];
      const isSame = weekOf(monday, always, a) === weekOf(monday, always, b);
      expect(isSame).toBe(isoWeek(a) === isoWeek(b));
    }),
  );
});

test('without breaks the weeks of a term count as many as the calendar has between them', () => {
  fc.assert(
    fc.property(anyDay, fc.nat(300), (from, days) => {
      const monday = mondayOf(from);
      const on = addDays(monday, days);
      const span = Temporal.PlainDate.from(monday).until(mondayOf(on), { largestUnit: 'weeks' });
      expect(weekOf(monday, always, on)).toBe(span.weeks + 1);
    }),
  );
});
