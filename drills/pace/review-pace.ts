import { addDays, type SchoolDay, type Weekday } from '../calendar/school-day.ts';
import { type EveningStatus, silentRun } from '../digest/silent-run.ts';
import { type DrillRate, drillWeekdays, type FamilyPace, isPaused } from './family-pace.ts';

/** So many silent weeks in a row, counted in evenings that came, and fewer evenings follow. The project's rule. */
const SILENT_WEEKS = 2;
/** The teacher has this many days to phone, or to keep it daily. Our choice. */
export const TELL_DAYS = 3;
/** How far back a review looks for silence: two weeks, and the longest holiday between them. */
export const REVIEW_DAYS = 70;

const EVENINGS: Readonly<Record<DrillRate, number>> = { daily: 7, three: 3, one: 1 };

/** What a day's review looks at. `told` says that the teacher was told of what is announced, or that there was nobody to tell. */
export interface PaceLook {
  readonly today: SchoolDay;
  /** The family's evenings in order of day. One of today without an answer is still open and does not count. */
  readonly evenings: readonly { readonly day: SchoolDay; readonly status: EveningStatus }[];
  /** The class's school days in an ordinary week. */
  readonly weekdays: readonly Weekday[];
  readonly told: boolean;
}

/**
 * Looks at a family's pace once a day. Silence for two weeks is announced to the teacher first; {@link TELL_DAYS} days after
 * the teacher was told and still without an answer, the next lower rate begins. Not told by then, it is announced anew. Nothing
 * steps down during a pause, while a teacher keeps it daily, or when nobody is there any more; an evening that never arrived
 * is no silence, and days without evenings are none either.
 *
 * @example
 * reviewPace(START_PACE, { today, evenings: tenSilent, weekdays: [1, 2, 3, 4, 5], told: false }).announced?.on; // today
 */
export function reviewPace(pace: FamilyPace, look: PaceLook): FamilyPace {
  const { today } = look;
  if (pace.stopped || isPaused(pace, today)) return pace;
  const counted = countedOf(pace, look);
  if (pace.kept) {
    const answered = counted.some(({ status }) => status === 'practised' || status === 'not_today');
    return answered ? { ...pace, kept: false } : pace;
  }
  const lower = lowerRate(pace, look.weekdays);
  if (lower === null || silentRun(counted) < SILENT_WEEKS * eveningsAWeek(pace, look.weekdays)) {
    return pace.announced === null ? pace : { ...pace, announced: null };
  }
  const { announced } = pace;
  if (announced !== null && today < announced.from) return pace;
  if (announced === null || !look.told) return announce(pace, today);
  return { ...pace, rate: lower, rateFrom: today, announced: null };
}

/**
 * Announces the next lower rate: to the teacher today, to the family with its first fewer evening.
 *
 * @example
 * announce(START_PACE, today).announced; // { on: today, from: addDays(today, 3) }
 */
export function announce(pace: FamilyPace, today: SchoolDay): FamilyPace {
  return { ...pace, announced: { on: today, from: addDays(today, TELL_DAYS) } };
}

/**
 * How many evenings come in an ordinary week at this pace.
 *
 * @example
 * eveningsAWeek({ ...START_PACE, rate: 'three' }, [1, 2, 3, 4, 5]); // 3
 */
export function eveningsAWeek(pace: FamilyPace, weekdays: readonly Weekday[]): number {
  return Math.min(EVENINGS[pace.rate], drillWeekdays(pace, weekdays).length);
}

/**
 * The next rate that means fewer evenings for this family; null when there is none. A family that chose three days goes
 * straight to one.
 *
 * @example
 * lowerRate({ ...START_PACE, days: [1, 3] }, [1, 2, 3, 4, 5]); // 'one'
 */
export function lowerRate(pace: FamilyPace, weekdays: readonly Weekday[]): DrillRate | null {
  const now = eveningsAWeek(pace, weekdays);
  if (now > EVENINGS.three) return 'three';
  return now > EVENINGS.one ? 'one' : null;
}

/** The evenings since the family was last heard from and its rate began. */
function countedOf({ heard, rateFrom }: FamilyPace, { evenings, today }: PaceLook) {
  return evenings.filter(
    ({ day, status }) =>
      (heard === null || day > heard) &&
      (rateFrom === null || day >= rateFrom) &&
      (day < today || status !== 'silent'),
  );
}
