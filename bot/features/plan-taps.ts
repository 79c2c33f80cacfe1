import {
  AppError,
  activatePlan,
  getClass,
  getPlans,
  saveDraftPlan,
  type TeacherScope,
} from '../../db/index.ts';
import {
  checkPlan,
  maxCards,
  PLAN_LIMITS,
  type PlanPart,
  rungById,
  STRANDS,
  type Strand,
  type WeekPlan,
} from '../../drills/index.ts';
import { planPartScreen } from '../screens/plan-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { chooseStrandScreen, firstStepsScreen, stepsScreen } from '../screens/step-screens.ts';
import { planInUse, planProblem } from '../texts/plan.ts';
import { lines } from '../texts/words.ts';
import { readHome } from './class-home.ts';
import { readPlanScreen, workingPlan } from './read-plan.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** Everything a teacher can tap about the week plan. Changes are kept as a draft until "Use". */
export const planTaps: TapHandlers<
  | 'plan'
  | 'planPart'
  | 'planAdd'
  | 'planStrand'
  | 'planSteps'
  | 'planRung'
  | 'planCards'
  | 'planSeconds'
  | 'planRemove'
  | 'planUse'
> = {
  plan: (tap, { classId }) => turn(tap, classId, (scope) => readPlanScreen(tap.deps.store, scope)),
  planPart: (tap, { classId, part }) =>
    turn(tap, classId, async (scope) => {
      const schoolClass = await getClass(tap.deps.store, scope);
      const { plan } = await workingPlan(tap.deps.store, scope);
      return planPartScreen(schoolClass, plan, part);
    }),
  planAdd: (tap, { classId }) =>
    turn(tap, classId, async (scope) => {
      const schoolClass = await getClass(tap.deps.store, scope);
      const { plan } = await workingPlan(tap.deps.store, scope);
      return chooseStrandScreen(schoolClass, plan.parts.length);
    }),
  planStrand: (tap, { classId, part, strand }) =>
    turn(tap, classId, async (scope) => {
      const schoolClass = await getClass(tap.deps.store, scope);
      const chosen = strandOf(strand);
      if (!chosen) return chooseStrandScreen(schoolClass, part);
      return firstStepsScreen(schoolClass, part, chosen);
    }),
  planSteps: (tap, { classId, part, strand, of, page }) =>
    turn(tap, classId, async (scope) => {
      const schoolClass = await getClass(tap.deps.store, scope);
      const chosen = strandOf(strand);
      if (!chosen) return chooseStrandScreen(schoolClass, part);
      return stepsScreen(schoolClass, part, { strand: chosen, of, page });
    }),
  planRung: (tap, { classId, part, rung }) =>
    turn(tap, classId, async (scope) => {
      const chosen = rungById(rung);
      if (!chosen) throw new AppError('invalid', 'week plan');
      const fresh = { rung: chosen.id, cards: chosen.cards, seconds: chosen.seconds };
      return edit(tap, scope, part, () => fresh);
    }),
  planCards: (tap, { classId, part, cards }) =>
    turn(tap, classId, (scope) =>
      edit(tap, scope, part, (old) => old && { ...old, cards: fitCards(old, cards) }),
    ),
  planSeconds: (tap, { classId, part, seconds }) =>
    turn(tap, classId, (scope) =>
      edit(
        tap,
        scope,
        part,
        (old) => old && { ...old, seconds: clamp(seconds, PLAN_LIMITS.seconds) },
      ),
    ),
  planRemove: (tap, { classId, part, rung }) =>
    turn(tap, classId, async (scope) => {
      const { plan } = await workingPlan(tap.deps.store, scope);
      // A second quick tap must not take the part that moved up into this place.
      if (plan.parts[part]?.rung === rung) {
        await save(tap, scope, { parts: plan.parts.toSpliced(part, 1) });
      }
      return readPlanScreen(tap.deps.store, scope);
    }),
  planUse: use,
};

async function use(tap: Tap, { classId }: { classId: string }): Promise<void> {
  const { store, clock } = tap.deps;
  const scope = await teacherScope(store, tap.userId, classId);
  const { draft } = await getPlans(store, scope);
  const [problem] = draft ? checkPlan(draft.plan) : [];
  if (problem) return tap.answer(planProblem(problem), 'alert');
  if (draft) await activatePlan(store, scope, clock.now());
  await tap.answer(planInUse().text);
  const home = await readHome(store, scope);
  await tap.show({ ...home, text: lines(planInUse(), '', home.text) });
}

/** Changes one part, or adds it at the end; then shows it. */
async function edit(
  tap: Tap,
  scope: TeacherScope,
  index: number,
  change: (old: PlanPart | undefined) => PlanPart | undefined,
): Promise<Screen> {
  const schoolClass = await getClass(tap.deps.store, scope);
  const { plan } = await workingPlan(tap.deps.store, scope);
  const at = Math.min(index, plan.parts.length);
  const part = change(plan.parts[at]);
  if (!part || at >= PLAN_LIMITS.parts.max) return readPlanScreen(tap.deps.store, scope);
  const next = { parts: plan.parts.toSpliced(at, 1, part) };
  await save(tap, scope, next);
  return planPartScreen(schoolClass, next, at);
}

async function save(tap: Tap, scope: TeacherScope, plan: WeekPlan): Promise<void> {
  await saveDraftPlan(tap.deps.store, scope, { plan, now: tap.deps.clock.now() });
}

function strandOf(text: string): Strand | undefined {
  return STRANDS.find((strand) => strand === text);
}

function fitCards(part: PlanPart, cards: number): number {
  const rung = rungById(part.rung);
  const max = rung ? maxCards(rung) : PLAN_LIMITS.cards.max;
  return clamp(cards, { min: PLAN_LIMITS.cards.min, max });
}

function clamp(value: number, { min, max }: { min: number; max: number }): number {
  return Math.min(max, Math.max(min, value));
}
