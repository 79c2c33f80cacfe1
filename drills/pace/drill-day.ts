import {
  addDays,
  isSchoolDay,
  type SchoolCalendar,
  type SchoolDay,
  schoolDaysIn,
  type Weekday,
} from '../calendar/school-day.ts';
import { mondayOf } from '../scheme/term-weeks.ts';
import { type DrillRate, drillWeekdays, type FamilyPace, isPaused } from './family-pace.ts';

/** Whether the drill comes on a day, or why not. `other_day` means that it comes on other school days of the week. */
export type DrillDay = 'comes' | 'stopped' | 'paused' | 'no_school' | 'other_day';

const MOST: Readonly<Record<DrillRate, number>> = {
  daily: Number.POSITIVE_INFINITY,
  three: 3,
  one: 1,
};

/**
 * Whether a family's drill comes on a day. `cameThisWeek` counts the evenings it had since Monday, before this day: with fewer
 * evenings a week there are never more than said, however the calendar changes meanwhile. Three evenings are spread over the
 * week's own school days, one is the first of them.
 *
 * @example
 * drillDay({ ...START_PACE, rate: 'three' }, { day: tuesday, calendar, cameThisWeek: 1 }); // 'other_day'
 */
export function drillDay(
  pace: FamilyPace,
  {
    day,
    calendar,
    cameThisWeek,
  }: { day: SchoolDay; calendar: SchoolCalendar; cameThisWeek: number },
): DrillDay {
  if (pace.stopped) return 'stopped';
  if (isPaused(pace, day)) return 'paused';
  if (!isSchoolDay(day, calendar)) return 'no_school';
  const own = { ...calendar, weekdays: drillWeekdays(pace, calendar.weekdays) };
  const monday = mondayOf(day);
  const week = schoolDaysIn(monday, addDays(monday, 6), own).filter(
    (each) => !isPaused(pace, each),
  );
  const most = MOST[pace.rate];
  return cameThisWeek < most && spread(week, most).includes(day) ? 'comes' : 'other_day';
}

/**
 * The weekdays of an ordinary week on which a family's drill comes, a pause left aside.
 *
 * @example
 * usualWeekdays({ ...START_PACE, rate: 'three' }, [1, 2, 3, 4, 5]); // [1, 3, 5]
 */
export function usualWeekdays(pace: FamilyPace, ofClass: readonly Weekday[]): readonly Weekday[] {
  return spread(drillWeekdays(pace, ofClass), MOST[pace.rate]);
}

/**
 * So many of the items, as evenly as can be, the first and the last among them.
 *
 * @example
 * spread(['mon', 'tue', 'wed', 'thu', 'fri'], 3); // ['mon', 'wed', 'fri']
 */
export function spread<T>(items: readonly T[], size: number): readonly T[] {
  if (items.length <= size) return items;
  const gap = size > 1 ? (items.length - 1) / (size - 1) : 0;
  const places = new Set(Array.from({ length: size }, (_, at) => Math.round(at * gap)));
  return items.filter((_, place) => places.has(place));
}
