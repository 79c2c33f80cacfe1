import {
  AppError,
  followTerm,
  getClass,
  getScheme,
  type SchoolClass,
  saveDraftPlan,
  saveSchemeWeek,
  type TeacherScope,
} from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import type { Screen } from '../screens/screen.ts';
import { readPlanScreen, workingPlan } from './read-plan.ts';
import { readTermWeek } from './read-term.ts';
import type { Tap } from './tap.ts';

/** A plan under a teacher's hands: the week plan, kept as a draft until it is used, or a week of the term, kept at once. */
export interface PlanDesk {
  readonly schoolClass: SchoolClass;
  readonly plan: WeekPlan;
  save(plan: WeekPlan): Promise<void>;
  /** The whole plan as it stands now. */
  show(): Promise<Screen>;
}

/** Opens the plan of a week of the term, or the week plan for week 0. A week that is not there is `not_found`. */
export async function openDesk(tap: Tap, scope: TeacherScope, week: number): Promise<PlanDesk> {
  const { store, clock } = tap.deps;
  const schoolClass = await getClass(store, scope);
  if (week === 0) {
    const { plan } = await workingPlan(store, scope);
    return {
      schoolClass,
      plan,
      save: (changed) => saveDraftPlan(store, scope, { plan: changed, now: clock.now() }),
      show: () => readPlanScreen(store, scope, clock.now()),
    };
  }
  const plan = (await getScheme(store, scope))?.weeks[week - 1];
  if (!plan) throw new AppError('not_found', 'term week');
  return {
    schoolClass,
    plan,
    save: async (changed) => {
      await saveSchemeWeek(store, scope, { week, plan: changed, now: clock.now() });
      await followTerm(store, schoolClass, clock.now());
    },
    show: () => readTermWeek(store, scope, { week, now: clock.now() }),
  };
}
