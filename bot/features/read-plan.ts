import { currentBook, getPlans, type Store, type TeacherScope } from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import { planScreen } from '../screens/plan-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { readTermStand } from './term-stand.ts';

/** The draft, or the plan in use while nothing is changed. */
export async function workingPlan(
  store: Store,
  scope: TeacherScope,
): Promise<{ plan: WeekPlan; isDraft: boolean }> {
  const { active, draft } = await getPlans(store, scope);
  if (draft) return { plan: draft.plan, isDraft: true };
  return { plan: active?.plan ?? { parts: [] }, isDraft: false };
}

/** A class's week plan as it stands now. `act` is what was just done and can be taken back. */
export async function readPlanScreen(
  store: Store,
  scope: TeacherScope,
  now: Date,
  act: string | null = null,
): Promise<Screen> {
  const { schoolClass, scheme, week } = await readTermStand(store, scope, now);
  const { active, draft } = await getPlans(store, scope);
  return planScreen({
    schoolClass,
    plan: draft?.plan ?? active?.plan ?? { parts: [] },
    draft: draft?.source ?? null,
    active: active?.source ?? null,
    term: scheme && { week, of: scheme.weeks.length },
    book: await currentBook(store, scope),
    act,
  });
}
