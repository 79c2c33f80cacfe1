import {
  activatePlan,
  dropDraft,
  getPlans,
  loadDraft,
  type PlanSource,
  planInForceAt,
  type Store,
  type TeacherScope,
} from '../../db/index.ts';
import { checkPlan, proposePlan, samePlan, type WeekPlan } from '../../drills/index.ts';
import { undoButton } from '../screens/undo.ts';
import { NO_SOURCE_PLAN, planInUse, planProblem } from '../texts/plan.ts';
import { lines } from '../texts/words.ts';
import { actBehind } from './act-behind.ts';
import { readHome } from './class-home.ts';
import { digestFor } from './digest-source.ts';
import { readPlanScreen } from './read-plan.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { lastWeeksEvening, readTermStand } from './term-stand.ts';

/** Taking a whole plan from somewhere, using what was changed, or dropping it. */
export const planSourceTaps: TapHandlers<'planSource' | 'planUse' | 'planDrop'> = {
  planSource: take,
  planUse: use,
  planDrop: async (tap, { classId }) => {
    const { store, clock } = tap.deps;
    const scope = await teacherScope(store, tap.userId, classId);
    const act = await dropDraft(store, scope, clock.now());
    await tap.answer();
    await tap.show(await readPlanScreen(store, scope, clock.now(), act));
  },
};

/** Puts a plan from last week, the digest or the term into the draft, to be looked at before it is used. */
async function take(tap: Tap, { classId, from }: { classId: string; from: string }): Promise<void> {
  const { store, clock } = tap.deps;
  const now = clock.now();
  const scope = await teacherScope(store, tap.userId, classId);
  const found = await planFrom(tap, scope, from);
  if (typeof found === 'string') {
    await tap.answer(found, 'alert');
    return tap.show(await readPlanScreen(store, scope, now));
  }
  const act = await loadDraft(store, scope, { ...found, now });
  await tap.answer();
  await tap.show(await readPlanScreen(store, scope, now, act));
}

interface Found {
  readonly plan: WeekPlan;
  readonly source: PlanSource;
}

/** A plan with where it comes from, or why there is none. */
async function planFrom(tap: Tap, scope: TeacherScope, from: string): Promise<Found | string> {
  switch (from) {
    case 'digest':
      return proposed(tap, scope);
    case 'term':
      return fromTerm(tap.deps.store, scope, tap.deps.clock.now());
    default:
      return lastWeeks(tap.deps.store, scope, tap.deps.clock.now());
  }
}

async function proposed({ deps }: Tap, scope: TeacherScope): Promise<Found | string> {
  const { active } = await getPlans(deps.store, scope);
  const { summary } = await digestFor(deps, scope, 'now');
  const { plan, steps } = proposePlan(active?.plan ?? { parts: [] }, summary);
  return steps.length > 0 ? { plan, source: 'proposal' } : NO_SOURCE_PLAN.digest;
}

async function fromTerm(store: Store, scope: TeacherScope, now: Date): Promise<Found | string> {
  const { scheme, week } = await readTermStand(store, scope, now);
  const plan = scheme && week ? scheme.weeks[week - 1] : undefined;
  if (!plan) return NO_SOURCE_PLAN.term;
  const { active } = await getPlans(store, scope);
  const isInUse = active?.source === 'scheme' && samePlan(active.plan, plan);
  return isInUse ? NO_SOURCE_PLAN.same : { plan, source: 'scheme' };
}

/** With a term in use even the same plan once more is a choice: it keeps the term's next plan out for a week. */
async function lastWeeks(store: Store, scope: TeacherScope, now: Date): Promise<Found | string> {
  const stand = await readTermStand(store, scope, now);
  const at = lastWeeksEvening(stand);
  const found = at && (await planInForceAt(store, scope, at));
  if (!found) return NO_SOURCE_PLAN.last;
  const { active } = await getPlans(store, scope);
  const isInUse = active !== null && samePlan(active.plan, found.plan);
  if (isInUse && !stand.scheme) return NO_SOURCE_PLAN.same;
  return { plan: found.plan, source: 'teacher' };
}

async function use(tap: Tap, { classId }: { classId: string }): Promise<void> {
  const { store, clock } = tap.deps;
  const scope = await teacherScope(store, tap.userId, classId);
  const { draft } = await getPlans(store, scope);
  const [problem] = draft ? checkPlan(draft.plan) : [];
  if (problem) return tap.answer(planProblem(problem), 'alert');
  if (draft) await activatePlan(store, scope, clock.now());
  await tap.answer(planInUse().text);
  const home = await readHome(store, scope);
  const { active } = await getPlans(store, scope);
  const act = active && (await actBehind(store, scope, active.id, 'planUsed', clock.now()));
  const undo = act ? [[undoButton(act)]] : [];
  const text = lines(planInUse(), '', home.text);
  await tap.show({ text, buttons: [...undo, ...home.buttons] });
}
