import { AppError, type Store, type TeacherScope } from '../../db/index.ts';
import {
  addDays,
  makeScheme,
  mondayOf,
  nextSchoolDay,
  rungsInPart,
  type SchoolDay,
  schoolDaysIn,
  type WeekPlan,
  type YearShare,
} from '../../drills/index.ts';
import type { Screen } from '../screens/screen.ts';
import {
  newTermScreen,
  type TermView,
  termNeedsGradeScreen,
  termScreen,
  termWeekScreen,
} from '../screens/term-screens.ts';
import { gradeName } from '../texts/grades.ts';
import { readTermStand, type TermStand } from './term-stand.ts';

/** What a new term is made with until the teacher says otherwise: the length of many terms. */
export const USUAL_TERM = { weeks: 10, share: 'all' } as const;

/** The term on the page that was asked for, or what to make one from. */
export async function readTerm(
  store: Store,
  scope: TeacherScope,
  { page, now, act = null }: { page: number; now: Date; act?: string | null },
): Promise<Screen> {
  const stand = await readTermStand(store, scope, now);
  const view = viewOf(stand);
  return view ? termScreen(view, page, act) : newTerm(stand, USUAL_TERM);
}

/** One week of the term; `not_found` when there is no such week. */
export async function readTermWeek(
  store: Store,
  scope: TeacherScope,
  { week, now }: { week: number; now: Date },
): Promise<Screen> {
  const view = viewOf(await readTermStand(store, scope, now));
  if (!view?.scheme.weeks[week - 1]) throw new AppError('not_found', 'term week');
  return termWeekScreen(view, week);
}

/** What a term is made from. A class without a grade is led to choosing it. */
export function newTerm(
  stand: TermStand,
  { weeks, share }: { weeks: number; share: YearShare },
): Screen {
  const { schoolClass, scheme: current } = stand;
  const grade = gradeName(schoolClass);
  const plans = plansOf(stand, { weeks, share });
  if (grade === null || plans.length === 0) return termNeedsGradeScreen(schoolClass);
  const steps = new Set(plans.flatMap(({ parts }) => parts.flatMap(rungsInPart))).size;
  const starts = startsOf(stand);
  return newTermScreen(schoolClass, { weeks, share, starts, steps, grade, current });
}

/** The weeks of a term as it would be made for the class; none while it has no grade. */
export function plansOf(
  { schoolClass: { curriculum, grade } }: TermStand,
  { weeks, share }: { weeks: number; share: YearShare },
): readonly WeekPlan[] {
  return grade === null ? [] : makeScheme({ curriculum, grade, weeks, share });
}

/** The days a new term can begin on: in the week of the next evening, or in the first week with school after it. */
export function startsOf({ next, calendar }: TermStand): readonly SchoolDay[] {
  const sunday = addDays(mondayOf(next), 6);
  const [first = next] = schoolDaysIn(mondayOf(next), sunday, calendar);
  const after = nextSchoolDay(sunday, calendar);
  return after ? [first, after] : [first];
}

function viewOf({ schoolClass, scheme, starts, week }: TermStand): TermView | null {
  return scheme && { schoolClass, scheme, starts, week, weeks: scheme.weeks };
}
