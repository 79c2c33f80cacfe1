import {
  daysBetween,
  nextSchoolDay,
  parseSchoolDay,
  type SchoolDay,
} from '../../../drills/index.ts';

/** One school day of the simulated term. `day` counts calendar days from the first one; `next` is the next school day's. */
export interface TermDay {
  readonly today: SchoolDay;
  readonly day: number;
  readonly next: number;
}

const FIRST_MONDAY = '2026-09-07';
const CALENDAR = { weekdays: [1, 2, 3, 4, 5], breaks: [] } as const;

/** So many school days from a Monday on, Monday to Friday, without breaks. Weekends pass, so that children forget over them. */
export function termOf(days: number): readonly TermDay[] {
  const first = parseSchoolDay(FIRST_MONDAY);
  const term: TermDay[] = [];
  let today = first;
  while (first !== null && today !== null && term.length < days) {
    const tomorrow = nextSchoolDay(today, CALENDAR);
    if (tomorrow === null) break;
    const next = daysBetween(first, tomorrow);
    term.push({ today, day: daysBetween(first, today), next });
    today = tomorrow;
  }
  return term;
}
