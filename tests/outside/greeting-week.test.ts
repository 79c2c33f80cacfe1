import { Temporal } from 'temporal-polyfill';
import { expect, test } from 'vitest';
import {
  addDays,
  type GreetingTimes,
  greetingChoices,
  isGreetingDue,
  NO_LAST_DAY,
  parseSchoolDay,
  type SchoolDay,
} from '../../drills/index.ts';

// Source: the weeks of ISO 8601, Monday to Sunday, as TC39's Temporal numbers them (yearOfWeek and weekOfYear), by its polyfill.
function weekOf(day: SchoolDay): string {
  const { yearOfWeek, weekOfYear } = Temporal.PlainDate.from(day);
  return `${yearOfWeek}-W${weekOfYear}`;
}

/** Every day of eleven years, in which a year begins on each weekday. */
function days(): SchoolDay[] {
  const first = parseSchoolDay('2020-01-01');
  if (first === null) throw new Error('the first day is no date');
  return Array.from({ length: 11 * 366 }, (_, ahead) => addDays(first, ahead));
}

test('a greeting for first evenings is due again the day after it came exactly where an ISO week begins', () => {
  const [first] = days();
  if (!first) throw new Error('there is no first day');
  const kept: GreetingTimes = { evenings: 'first', first, last: NO_LAST_DAY };
  const wrong = days().filter((day) => {
    const next = addDays(day, 1);
    return isGreetingDue(kept, next, day) !== (weekOf(day) !== weekOf(next));
  });
  expect(wrong).toEqual([]);
});

test('the week a greeting is given ends with its ISO week', () => {
  const calendar = { weekdays: [1, 2, 3, 4, 5], breaks: [] } as const;
  const wrong = days().filter((day) => {
    const { last } = greetingChoices(day, calendar).thisWeek;
    return weekOf(last) !== weekOf(day) || weekOf(addDays(last, 1)) === weekOf(day);
  });
  expect(wrong).toEqual([]);
});
