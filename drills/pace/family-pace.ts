import type { SchoolDay, Weekday } from '../calendar/school-day.ts';

/*
 * How often the drill comes to a family. Every school day, unless the family or its silence says otherwise:
 *
 *   state       what comes                     leaves it
 *   daily       every school day               two silent weeks -> told
 *   told        still every school day         an answer -> daily; three days after the teacher was told -> three
 *   three       three evenings a week          two silent weeks -> told -> one
 *   one         one evening a week             nothing but somebody's tap
 *   kept        every school day               an answer -> daily; the teacher's tap -> told
 *   paused      nothing                        its day comes, or "Start again now" -> as before
 *   stopped     nothing                        somebody joins anew -> daily
 *
 * Any tap of the family about its pace is an answer, too: told and kept end, silence is counted from the next evening.
 * One tap of the family ("Every school day") or of the teacher ("Keep daily") leads from three and one to daily at once.
 * The days a family chose hold in every state; `paused` lies over the others and leaves them as they are.
 *
 * Two weeks, three evenings and one are the project's rule; that three messages a week did better than one or five was found
 * by Cortes, Fricke, Loeb, Song and York (2021), Education Finance and Policy 16(2).
 */

/** How many evenings of a week the drill comes on; the fewest last. */
export const DRILL_RATES = ['daily', 'three', 'one'] as const;

/** One of {@link DRILL_RATES}. */
export type DrillRate = (typeof DRILL_RATES)[number];

/**
 * The pace of a child's family, whoever helps. `rateFrom` is the first day of this rate, null from the beginning; `announced`
 * says when the teacher was told of fewer evenings and from when on they come; `kept` that a teacher keeps it daily; `heard` is
 * the last day on which the family said something about its pace; the drill comes again on `pausedUntil`; `days` are the
 * weekdays the family chose, null for all. `stopped` means that nobody helps the child any more.
 */
export interface FamilyPace {
  readonly rate: DrillRate;
  readonly rateFrom: SchoolDay | null;
  readonly announced: { readonly on: SchoolDay; readonly from: SchoolDay } | null;
  readonly kept: boolean;
  readonly heard: SchoolDay | null;
  readonly pausedUntil: SchoolDay | null;
  readonly days: readonly Weekday[] | null;
  readonly stopped: boolean;
}

/** A family that never said anything about its pace and was never silent for long. */
export const START_PACE: FamilyPace = {
  rate: 'daily',
  rateFrom: null,
  announced: null,
  kept: false,
  heard: null,
  pausedUntil: null,
  days: null,
  stopped: false,
};

/**
 * Whether nothing comes on a day because the family paused. The day a pause ends with is not part of it.
 *
 * @example
 * isPaused({ ...START_PACE, pausedUntil: monday }, monday); // false
 */
export function isPaused({ pausedUntil }: FamilyPace, day: SchoolDay): boolean {
  return pausedUntil !== null && day < pausedUntil;
}

/**
 * The weekdays on which a family's drill may come: the class's that it chose, in order. Where the class has none of them any
 * more, all of the class's: a family is not left without drills by a change it did not make.
 *
 * @example
 * drillWeekdays({ ...START_PACE, days: [1, 3] }, [1, 2, 3, 4, 5]); // [1, 3]
 */
export function drillWeekdays(
  { days }: Pick<FamilyPace, 'days'>,
  ofClass: readonly Weekday[],
): readonly Weekday[] {
  if (days === null) return ofClass;
  const chosen = ofClass.filter((weekday) => days.includes(weekday));
  return chosen.length > 0 ? chosen : ofClass;
}
