import type { Language, SchoolDay, TimeOfDay, Weekday } from '../../drills/index.ts';
import { parseSchoolDay, parseTimeOfDay, WEEKDAYS } from '../../drills/index.ts';
import { storedLanguage } from '../languages/stored-language.ts';
import type { schoolClass } from '../schema/index.ts';
import { type ClassGrade, storedClassGrade } from './class-grade.ts';

/** A class and its week, as everything above db/ sees it. */
export interface SchoolClass extends ClassGrade {
  readonly id: string;
  readonly title: string;
  readonly zone: string;
  /** The language of instruction, in which cards are worded. */
  readonly language: Language;
  readonly weekdays: readonly Weekday[];
  readonly eveningTime: TimeOfDay;
  readonly nudgeTime: TimeOfDay;
  readonly digestWeekday: Weekday;
  readonly digestTime: TimeOfDay;
  /** Since when the digest's day and time are as they are: the day the class was made, at first. */
  readonly digestSince: Date;
}

/** Reads a stored class. Throws when a row holds what no write of ours allows. */
export function toSchoolClass(row: typeof schoolClass.$inferSelect): SchoolClass {
  return {
    id: row.id,
    title: row.title,
    zone: row.zone,
    language: storedLanguage(row.language),
    weekdays: row.weekdays.map(storedWeekday),
    eveningTime: storedTime(row.eveningTime),
    nudgeTime: storedTime(row.nudgeTime),
    digestWeekday: storedWeekday(row.digestWeekday),
    digestTime: storedTime(row.digestTime),
    digestSince: row.digestSince,
    ...storedClassGrade(row),
  };
}

/** A stored time of day. */
export function storedTime(text: string): TimeOfDay {
  const time = parseTimeOfDay(text);
  if (!time) throw new TypeError('stored time of day is not HH:MM');
  return time;
}

/** A stored school day. */
export function storedDay(text: string): SchoolDay {
  const day = parseSchoolDay(text);
  if (!day) throw new TypeError('stored day is not YYYY-MM-DD');
  return day;
}

function storedWeekday(value: number): Weekday {
  const weekday = WEEKDAYS.find((candidate) => candidate === value);
  if (!weekday) throw new TypeError('stored weekday is not 1 to 7');
  return weekday;
}
