import type { SchoolDay, Weekday } from '../calendar/school-day.ts';
import { type DrillRate, type FamilyPace, isPaused } from './family-pace.ts';
import { lowerRate } from './review-pace.ts';

/** Why a family's drill does not simply come every school day, for who asks on a day. */
export type PaceStand =
  | { readonly kind: 'paused'; readonly until: SchoolDay }
  | { readonly kind: 'announced'; readonly rate: DrillRate; readonly from: SchoolDay }
  | { readonly kind: 'fewer'; readonly rate: DrillRate; readonly from: SchoolDay | null }
  | { readonly kind: 'kept' }
  | { readonly kind: 'days'; readonly days: readonly Weekday[] };

/**
 * What there is to tell about a family's pace on a day; null when the drill simply comes every school day. Of several things
 * the first of paused, announced, fewer, kept, days is told.
 *
 * @example
 * paceStand({ ...START_PACE, kept: true }, today, [1, 2, 3, 4, 5]); // { kind: 'kept' }
 */
export function paceStand(
  pace: FamilyPace,
  today: SchoolDay,
  weekdays: readonly Weekday[],
): PaceStand | null {
  const { rate, announced, pausedUntil, days } = pace;
  if (pausedUntil !== null && isPaused(pace, today)) return { kind: 'paused', until: pausedUntil };
  const lower = lowerRate(pace, weekdays);
  if (announced !== null && lower !== null) {
    return { kind: 'announced', rate: lower, from: announced.from };
  }
  if (rate !== 'daily') return { kind: 'fewer', rate, from: pace.rateFrom };
  if (pace.kept) return { kind: 'kept' };
  return days === null ? null : { kind: 'days', days };
}
