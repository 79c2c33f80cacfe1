import { getClass, getPlans, type Store, type TeacherScope } from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import { planScreen } from '../screens/plan-screens.ts';
import type { Screen } from '../screens/screen.ts';

/** The draft, or the plan in use while nothing is changed. */
export async function workingPlan(
  store: Store,
  scope: TeacherScope,
): Promise<{ plan: WeekPlan; isDraft: boolean }> {
  const { active, draft } = await getPlans(store, scope);
  if (draft) return { plan: draft.plan, isDraft: true };
  return { plan: active?.plan ?? { parts: [] }, isDraft: false };
}

/** A class's week plan as it stands now. */
export async function readPlanScreen(store: Store, scope: TeacherScope): Promise<Screen> {
  const schoolClass = await getClass(store, scope);
  const { plan, isDraft } = await workingPlan(store, scope);
  return planScreen(schoolClass, plan, isDraft);
}
