import { dateOf, dayNumberOf } from './day-number.ts';

declare const schoolDayBrand: unique symbol;

/** A date in a class's own time zone, `YYYY-MM-DD`. Never an instant: conversion happens once, at the edge, in db/calendar. */
export type SchoolDay = string & { readonly [schoolDayBrand]: true };

/** A day of the week as ISO 8601 numbers it: 1 is Monday, 7 is Sunday. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/** All seven, Monday first. */
export const WEEKDAYS: readonly Weekday[] = [1, 2, 3, 4, 5, 6, 7];

/** A holiday. Both ends belong to it. */
export interface Break {
  readonly first: SchoolDay;
  readonly last: SchoolDay;
}

/** The days a class practises: these weekdays, outside these breaks. */
export interface SchoolCalendar {
  readonly weekdays: readonly Weekday[];
  readonly breaks: readonly Break[];
}

const FURTHEST_LOOK_AHEAD = 366;

/**
 * Reads `YYYY-MM-DD`, years 0001 to 9999; null for any other spelling and for a date that does not exist.
 *
 * @example
 * parseSchoolDay('2026-02-30'); // null
 */
export function parseSchoolDay(text: string): SchoolDay | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return null;
  const number = dayNumberOf(Number(match[1]), Number(match[2]), Number(match[3]));
  // A date that does not exist, such as 30 February, has a day number that belongs to another date.
  return match[1] !== '0000' && spell(number) === text ? (text as SchoolDay) : null;
}

/**
 * The day `days` later, or earlier when negative. Throws RangeError when the result leaves the years 0001 to 9999.
 *
 * @example
 * addDays(day, 3); // '2026-03-02' when day is '2026-02-27'
 */
export function addDays(day: SchoolDay, days: number): SchoolDay {
  const moved = parseSchoolDay(spell(numberOf(day) + days));
  if (moved === null) throw new RangeError(`${days} days from ${day} is outside the calendar`);
  return moved;
}

/**
 * Whole days from `from` to `to`; negative when `to` is the earlier one.
 *
 * @example
 * daysBetween(march1, february27); // -2 in 2026
 */
export function daysBetween(from: SchoolDay, to: SchoolDay): number {
  return numberOf(to) - numberOf(from);
}

/**
 * The ISO 8601 weekday of a date.
 *
 * @example
 * weekdayOf(day); // 4 when day is '1970-01-01', a Thursday
 */
export function weekdayOf(day: SchoolDay): Weekday {
  // Day 0 is a Thursday; the double remainder keeps days before 1970 in range.
  const sinceMonday = (((numberOf(day) + 3) % 7) + 7) % 7;
  return (sinceMonday + 1) as Weekday;
}

/**
 * Whether a class practises on this day.
 *
 * @example
 * isSchoolDay(saturday, { weekdays: [1, 2, 3, 4, 5], breaks: [] }); // false
 */
export function isSchoolDay(day: SchoolDay, calendar: SchoolCalendar): boolean {
  if (!calendar.weekdays.includes(weekdayOf(day))) return false;
  return !calendar.breaks.some(({ first, last }) => first <= day && day <= last);
}

/**
 * The school days from `first` to `last`, both included, in order; none when `last` is before `first`.
 *
 * @example
 * schoolDaysIn(friday, thursdayBefore, calendar); // []
 */
export function schoolDaysIn(
  first: SchoolDay,
  last: SchoolDay,
  calendar: SchoolCalendar,
): SchoolDay[] {
  const days: SchoolDay[] = [];
  for (let ahead = 0; ahead <= daysBetween(first, last); ahead += 1) {
    const day = addDays(first, ahead);
    if (isSchoolDay(day, calendar)) days.push(day);
  }
  return days;
}

/**
 * The first school day strictly after `after`; null when the next 366 days hold none.
 *
 * @example
 * nextSchoolDay(day, { weekdays: [], breaks: [] }); // null
 */
export function nextSchoolDay(after: SchoolDay, calendar: SchoolCalendar): SchoolDay | null {
  for (let ahead = 1; ahead <= FURTHEST_LOOK_AHEAD; ahead += 1) {
    const day = addDays(after, ahead);
    if (isSchoolDay(day, calendar)) return day;
  }
  return null;
}

/**
 * A date's day number: whole days since 1970-01-01, as the memory models count them.
 *
 * @example
 * numberOf(day); // 20705 when day is '2026-09-09'
 */
export function numberOf(day: SchoolDay): number {
  return dayNumberOf(Number(day.slice(0, 4)), Number(day.slice(5, 7)), Number(day.slice(8)));
}

function spell(dayNumber: number): string {
  const { year, month, day } = dateOf(dayNumber);
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`;
}

function pad(value: number, width: number): string {
  return String(value).padStart(width, '0');
}
