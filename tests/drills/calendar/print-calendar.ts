import {
  addDays,
  daysBetween,
  nextSchoolDay,
  parseSchoolDay,
  weekdayOf,
} from '../../../drills/index.ts';

// Run as a program of its own by time-zone.test.ts, once for each time zone.

const start = parseSchoolDay('2011-12-20');
if (start === null) throw new Error('the first day is no date');

const days = Array.from({ length: 400 }, (_, ahead) => addDays(start, ahead));
const calendar = days.map((day) => [
  day,
  weekdayOf(day),
  daysBetween(start, day),
  nextSchoolDay(day, { weekdays: [1, 2, 3, 4, 5], breaks: [] }),
]);
const midsummer = new Date(2012, 5, 21);
process.stdout.write(JSON.stringify({ calendar, machineOffset: midsummer.getTimezoneOffset() }));
