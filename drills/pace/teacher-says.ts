import type { SchoolDay } from '../calendar/school-day.ts';
import type { FamilyPace } from './family-pace.ts';
import { announce } from './review-pace.ts';

/**
 * The teacher keeps it daily: at once, and until the family answers. What the family chose itself stays as it is.
 *
 * @example
 * keepDaily({ ...START_PACE, rate: 'three' }, today); // { ...START_PACE, kept: true, rateFrom: today }
 */
export function keepDaily(pace: FamilyPace, today: SchoolDay): FamilyPace {
  const { rate, announced } = pace;
  if (rate === 'daily' && announced === null) return pace;
  return { ...pace, rate: 'daily', rateFrom: today, announced: null, kept: true };
}

/**
 * The teacher lets it go after all: fewer evenings are announced again as if the teacher had been told today. Where the teacher
 * does not keep it, nothing changes.
 *
 * @example
 * letGo({ ...START_PACE, kept: true }, today).announced?.on; // today
 */
export function letGo(pace: FamilyPace, today: SchoolDay): FamilyPace {
  if (!pace.kept) return pace;
  return announce({ ...pace, kept: false, rateFrom: null }, today);
}
