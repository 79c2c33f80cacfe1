import {
  getClass,
  getScheme,
  instantAt,
  listBreaks,
  type Scheme,
  type SchoolClass,
  type Store,
  type TeacherScope,
} from '../../db/index.ts';
import {
  addDays,
  mondayOf,
  type SchoolCalendar,
  type SchoolDay,
  schoolDayBefore,
  weekOf,
  weekStarts,
} from '../../drills/index.ts';
import { nextEvening } from './next-evening.ts';

/** As far back as the school day before a break can be. */
const LOOK_BACK_DAYS = 366;

/** A class's term, and where the next evening is in it. */
export interface TermStand {
  readonly schoolClass: SchoolClass;
  readonly scheme: Scheme | null;
  readonly calendar: SchoolCalendar;
  /** The school day of the next evening. */
  readonly next: SchoolDay;
  /** The week of the term that the next evening is in; null without a term and before its first week. */
  readonly week: number | null;
  /** The first school day of each of the term's weeks. */
  readonly starts: readonly SchoolDay[];
}

/** Reads where a class stands in its term. */
export async function readTermStand(
  store: Store,
  scope: TeacherScope,
  now: Date,
): Promise<TermStand> {
  const schoolClass = await getClass(store, scope);
  const scheme = await getScheme(store, scope);
  const { next } = await nextEvening(store, schoolClass, now);
  const back = addDays(next, -LOOK_BACK_DAYS);
  const from = scheme && scheme.firstDay < back ? scheme.firstDay : back;
  const breaks = await listBreaks(store, schoolClass.id, from);
  const calendar = { weekdays: schoolClass.weekdays, breaks };
  return {
    schoolClass,
    scheme,
    calendar,
    next,
    week: scheme && weekOf(scheme.firstDay, calendar, next),
    starts: scheme ? weekStarts(scheme.firstDay, calendar, scheme.weeks.length) : [],
  };
}

/** When the last evening of the school week before the next evening's week was: what was in force then was last week's plan. */
export function lastWeeksEvening({ schoolClass, calendar, next }: TermStand): Date | null {
  const day = schoolDayBefore(mondayOf(next), calendar);
  return day && instantAt(day, schoolClass.eveningTime, schoolClass.zone);
}
