import { daysBetween, type SchoolDay, type Weekday } from '../calendar/school-day.ts';
import { drillWeekdays, type FamilyPace, isPaused, START_PACE } from './family-pace.ts';

/** Longer than any school holiday, and shorter than what a mistyped year gives. Common practice, no source. */
export const LONGEST_PAUSE_DAYS = 120;

/** Whatever a family says about its pace, it has been heard: silence is counted anew, and nothing stays announced or kept. */
function heard(pace: FamilyPace, today: SchoolDay): FamilyPace {
  return { ...pace, heard: today, announced: null, kept: false };
}

/**
 * Why a pause cannot end with a day: it is over (`past`: today and before), or too far off (`far`); null when it can.
 *
 * @example
 * pauseProblem(addDays(today, 121), today); // 'far'
 */
export function pauseProblem(until: SchoolDay, today: SchoolDay): 'past' | 'far' | null {
  const ahead = daysBetween(today, until);
  if (ahead < 1) return 'past';
  return ahead > LONGEST_PAUSE_DAYS ? 'far' : null;
}

/**
 * Nothing comes from now on until `until`, which pauseProblem has passed; then as before. A pause takes the place of another.
 *
 * @example
 * pauseDrill(START_PACE, monday, friday).pausedUntil; // monday
 */
export function pauseDrill(pace: FamilyPace, until: SchoolDay, today: SchoolDay): FamilyPace {
  return { ...heard(pace, today), pausedUntil: until };
}

/**
 * Ends a pause today. Without one nothing changes.
 *
 * @example
 * startAgain({ ...START_PACE, pausedUntil: monday }, friday).pausedUntil; // null
 */
export function startAgain(pace: FamilyPace, today: SchoolDay): FamilyPace {
  return isPaused(pace, today) ? { ...heard(pace, today), pausedUntil: null } : pace;
}

/** A weekday as a family ticks it. `ofClass` are the class's school days. */
export interface DrillDayChoice {
  readonly weekday: Weekday;
  readonly on: boolean;
  readonly ofClass: readonly Weekday[];
  readonly today: SchoolDay;
}

/**
 * Takes a weekday in or out. Whoever chooses days gets exactly these, also after silence. Null when no day would be left;
 * a weekday on which the class has no school, and one that is as wished already, change nothing.
 *
 * @example
 * chooseDrillDay(START_PACE, { weekday: 5, on: false, ofClass: [1, 3, 5], today: friday })?.days; // [1, 3]
 */
export function chooseDrillDay(pace: FamilyPace, choice: DrillDayChoice): FamilyPace | null {
  const { weekday, on, ofClass, today } = choice;
  const before = drillWeekdays(pace, ofClass);
  if (!ofClass.includes(weekday) || before.includes(weekday) === on) return pace;
  const after = ofClass.filter((each) => (each === weekday ? on : before.includes(each)));
  if (after.length === 0) return null;
  const days = after.length === ofClass.length ? null : after;
  return { ...atFullRate(heard(pace, today)), days };
}

/**
 * Every school day again, at once; a pause stays what it is. Where it is so already and nobody was silent, nothing changes.
 *
 * @example
 * everySchoolDay({ ...START_PACE, rate: 'one' }, today).rate; // 'daily'
 */
export function everySchoolDay(pace: FamilyPace, today: SchoolDay): FamilyPace {
  const { rate, announced, days } = pace;
  if (rate === 'daily' && announced === null && days === null) return pace;
  return { ...atFullRate(heard(pace, today)), days: null };
}

function atFullRate(pace: FamilyPace): FamilyPace {
  return { ...pace, rate: 'daily', rateFrom: null };
}

/** The last helper has left: nothing comes any more. */
export function familyStops(pace: FamilyPace): FamilyPace {
  return { ...pace, stopped: true };
}

/**
 * Somebody joins. A family that had stopped starts afresh: its earlier silence, pause and days are over.
 *
 * @example
 * familyJoins({ ...START_PACE, stopped: true, rate: 'one' }, today).rate; // 'daily'
 */
export function familyJoins(pace: FamilyPace, today: SchoolDay): FamilyPace {
  return pace.stopped ? { ...START_PACE, heard: today } : pace;
}
