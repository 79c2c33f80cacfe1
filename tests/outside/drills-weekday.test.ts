import { describe, expect, test } from 'vitest';
import { addDays, parseSchoolDay, weekdayOf } from '../../drills/index.ts';

// Source of the numbering: ISO 8601, Monday is 1 and Sunday is 7. The weekdays of the known dates are from memory of
// the public record, except 2000-01-01, a Saturday, which ISO 8601 itself uses as its example of week 1999-W52-6.
const KNOWN: readonly [string, number, string][] = [
  ['2000-01-01', 6, 'the ISO 8601 example 1999-W52-6'],
  ['1970-01-01', 4, 'the first day of Unix time'],
  ['1969-07-20', 7, 'the first landing on the moon'],
  ['1582-10-15', 5, 'the first day of the Gregorian calendar'],
  ['1900-01-01', 1, 'the first day of 1900'],
  ['2024-02-29', 4, 'a leap day'],
];

describe('ISO 8601 weekdays', () => {
  test.each(KNOWN)('%s is weekday %d: %s', (text, weekday) => {
    const day = parseSchoolDay(text);
    expect(day === null ? null : weekdayOf(day)).toBe(weekday);
  });

  // Source: the host's own calendar, ECMAScript Date in UTC and Intl's long weekday names.
  test('over three centuries dates and weekdays agree with Date and Intl', () => {
    const names = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
    const long = new Intl.DateTimeFormat('en-GB', { weekday: 'long', timeZone: 'UTC' });
    const start = parseSchoolDay('1850-01-01');
    if (start === null) throw new Error('the first day is no date');
    const disagreements: string[] = [];
    // 11 is prime to 7, 30 and 365, so every weekday, month and leap day comes up.
    for (let ahead = 0; ahead < 110_000; ahead += 11) {
      const day = addDays(start, ahead);
      const instant = new Date(Date.UTC(1850, 0, 1 + ahead));
      const weekday = names[weekdayOf(day) - 1];
      if (day !== instant.toISOString().slice(0, 10)) disagreements.push(day);
      if (weekday !== long.format(instant)) disagreements.push(`${day} ${weekday}`);
    }
    expect(disagreements).toEqual([]);
  });

  test('dates exist exactly where the host has them', () => {
    const disagreements: string[] = [];
    for (const year of [1900, 2000, 2023, 2024, 2100]) {
      for (let month = 1; month <= 12; month += 1) {
        for (let date = 1; date <= 31; date += 1) {
          const text = [year, month, date].map((part) => String(part).padStart(2, '0')).join('-');
          const exists = new Date(Date.UTC(year, month - 1, date)).getUTCDate() === date;
          if ((parseSchoolDay(text) !== null) !== exists) disagreements.push(text);
        }
      }
    }
    expect(disagreements).toEqual([]);
  });
});
