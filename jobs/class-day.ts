import {
  CLASS_LIMITS,
  instantAt,
  listBreaks,
  localTimeAt,
  type SchoolClass,
  type Store,
  storedTime,
} from '../db/index.ts';
import { isSchoolDay, type SchoolDay, type TimeOfDay } from '../drills/index.ts';

/** A class at one moment: its own date, its own wall clock, and whether it is a school day there. */
export interface ClassDay {
  readonly schoolClass: SchoolClass;
  readonly day: SchoolDay;
  readonly time: TimeOfDay;
  readonly isSchoolDay: boolean;
  /** When quiet hours begin today. Nothing is sent to a family from here on. */
  readonly quietAt: Date;
}

/** Looks at a class's clock and calendar at an instant. */
export async function classDayAt(
  store: Store,
  schoolClass: SchoolClass,
  now: Date,
): Promise<ClassDay> {
  const { day, time } = localTimeAt(now, schoolClass.zone);
  const breaks = await listBreaks(store, schoolClass.id, day);
  return {
    schoolClass,
    day,
    time,
    isSchoolDay: isSchoolDay(day, { weekdays: schoolClass.weekdays, breaks }),
    quietAt: instantAt(day, storedTime(CLASS_LIMITS.quietFrom), schoolClass.zone),
  };
}
