import type { SchoolDay } from '../calendar/school-day.ts';
import type { ProfileId } from '../curriculum/profiles.ts';
import type { WeekPlan } from '../evening/week-plan.ts';
import { makeScheme, TERM_WEEKS } from './make-scheme.ts';

/** Months in which a school year is taught. Common practice, no source: ten, with about two months of holidays. */
const SCHOOL_MONTHS = 10;

/**
 * The month in which each curriculum's school year begins: September in England and the United States, late January in South
 * Africa and Australia. Common practice, from memory; schools differ by some weeks.
 */
const FIRST_MONTH: Readonly<Record<ProfileId, number>> = {
  england: 9,
  ccss: 9,
  caps: 2,
  acara: 2,
  own: 9,
};

/**
 * How much of the school year is over on a day, from 0 in its first month to 1 in its last and in the holidays after it.
 *
 * @example
 * yearShare('england', day); // 0.1111111111111111 when the day is '2026-10-05'
 */
export function yearShare(curriculum: ProfileId, day: SchoolDay): number {
  const months = (Number(day.slice(5, 7)) - FIRST_MONTH[curriculum] + 12) % 12;
  return Math.min(1, months / (SCHOOL_MONTHS - 1));
}

/**
 * A plan to begin with: the steps usual in a grade that its place in the school year suggests, in their usual sizes. A guess
 * that a teacher looks over before it is used. No parts where the grade names no step.
 *
 * @example
 * firstPlan({ curriculum: 'england', grade: '2', day }).parts.length; // 5 when the day is '2026-09-14'
 */
export function firstPlan(input: {
  readonly curriculum: ProfileId;
  readonly grade: string;
  readonly day: SchoolDay;
}): WeekPlan {
  const { curriculum, grade, day } = input;
  const weeks = makeScheme({ curriculum, grade, weeks: TERM_WEEKS.max });
  const at = Math.round(yearShare(curriculum, day) * (weeks.length - 1));
  return weeks[at] ?? { parts: [] };
}
