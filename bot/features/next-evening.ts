import { listBreaks, localTimeAt, type SchoolClass, type Store } from '../../db/index.ts';
import {
  addDays,
  isSchoolDay,
  nextSchoolDay,
  type SchoolCalendar,
  type SchoolDay,
} from '../../drills/index.ts';

/** A class's calendar from today on, and the school day whose evening comes next: today, until the class's evening time. */
export async function nextEvening(
  store: Store,
  schoolClass: SchoolClass,
  now: Date,
): Promise<{ next: SchoolDay; calendar: SchoolCalendar }> {
  const { day, time } = localTimeAt(now, schoolClass.zone);
  const breaks = await listBreaks(store, schoolClass.id, day);
  const calendar = { weekdays: schoolClass.weekdays, breaks };
  const isToday = isSchoolDay(day, calendar) && time < schoolClass.eveningTime;
  // Without a school day in a whole year tomorrow will do: nothing goes out either way.
  const next = isToday ? day : (nextSchoolDay(day, calendar) ?? addDays(day, 1));
  return { next, calendar };
}
