import {
  parseSchoolDay,
  parseTimeOfDay,
  type SchoolDay,
  type TimeOfDay,
  type WeekPlan,
} from '../../drills/index.ts';

/** A date written out in a test; a mistyped one fails the test at once. */
export function day(text: string): SchoolDay {
  const parsed = parseSchoolDay(text);
  if (!parsed) throw new Error(`no such date: ${text}`);
  return parsed;
}

/** A time of day written out in a test. */
export function time(text: string): TimeOfDay {
  const parsed = parseTimeOfDay(text);
  if (!parsed) throw new Error(`no such time: ${text}`);
  return parsed;
}

/** The class's zone: two hours ahead of UTC all year. */
export const ZONE = 'Africa/Johannesburg';

/** A Monday of term and the days after it. */
export const MONDAY = day('2026-09-14');
export const TUESDAY = day('2026-09-15');
export const WEDNESDAY = day('2026-09-16');
export const THURSDAY = day('2026-09-17');
export const FRIDAY = day('2026-09-18');

/** That Monday morning at school. */
export const MORNING = new Date('2026-09-14T08:00:00Z');

/** `minutes` after half past five in the evening, in the class's zone, on a day. */
export function evening(on: SchoolDay, minutes = 0): Date {
  return new Date(Date.parse(`${on}T15:30:00Z`) + minutes * 60_000);
}

/** Doubles (5 cards), a run in fives (10 numbers) and bonds (8 cards). */
export const PLAN: WeekPlan = {
  parts: [
    { rung: 'doubles.to5', cards: 5, seconds: 3 },
    { rung: 'counting.fives', cards: 10, seconds: 3 },
    { rung: 'bonds.to10', cards: 8, seconds: 3 },
  ],
};
