import { AppError } from '../../db/index.ts';
import {
  maxCardsOf,
  mixIn,
  PLAN_LIMITS,
  type PlanPart,
  type Rung,
  rungById,
  rungsInPart,
  STRANDS,
  type Strand,
  type WeekPlan,
} from '../../drills/index.ts';
import { packPlace, unpackPlace } from '../callback/plan-place.ts';
import { planPartScreen } from '../screens/plan-part-screen.ts';
import type { Screen } from '../screens/screen.ts';
import type { Choosing } from '../screens/step-listing.ts';
import { chooseStrandScreen, firstStepsScreen, stepsScreen } from '../screens/step-screens.ts';
import { alreadyInPlan, planProblem } from '../texts/plan.ts';
import { openDesk, type PlanDesk } from './plan-desk.ts';
import { readPlanScreen } from './read-plan.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** The parts of a week plan, or of a week of the term: each one's step, cards and time. */
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
> = {
  plan: (tap, { classId }) =>
    turn(tap, classId, (scope) => readPlanScreen(tap.deps.store, scope, tap.deps.clock.now())),
  planPart: (tap, { classId, part }) =>
    atDesk(tap, classId, part, async ({ schoolClass, plan }) =>
      planPartScreen(schoolClass, plan, part),
    ),
  planAdd: (tap, { classId }) =>
    atDesk(tap, classId, 0, async ({ schoolClass, plan }) =>
      chooseStrandScreen(schoolClass, { part: plan.parts.length, present: [] }),
    ),
  planStrand: (tap, { classId, part, strand }) =>
    atDesk(tap, classId, part, async ({ schoolClass, plan }) => {
      const chosen = strandOf(strand);
      const choosing = choosingAt(plan, part);
      if (!chosen) return chooseStrandScreen(schoolClass, choosing);
      return firstStepsScreen(schoolClass, choosing, chosen);
    }),
  planSteps: (tap, { classId, part, strand, of, page }) =>
    atDesk(tap, classId, part, async ({ schoolClass, plan }) => {
      const chosen = strandOf(strand);
      const choosing = choosingAt(plan, part);
      if (!chosen) return chooseStrandScreen(schoolClass, choosing);
      return stepsScreen(schoolClass, choosing, { strand: chosen, of, page });
    }),
  planRung: choose,
  planCards: (tap, { classId, part, cards }) =>
    atDesk(tap, classId, part, (desk) =>
      change(desk, part, (old) => ({ ...old, cards: fitCards(old, cards) })),
    ),
  planSeconds: (tap, { classId, part, seconds }) =>
    atDesk(tap, classId, part, (desk) =>
      change(desk, part, (old) => ({ ...old, seconds: clamp(seconds, PLAN_LIMITS.seconds) })),
    ),
  planRemove: (tap, { classId, part, rung }) =>
    atDesk(tap, classId, part, async (desk) => {
      const { part: index } = unpackPlace(part);
      // A second quick tap must not take the part that moved up into this place.
      if (desk.plan.parts[index]?.rung === rung) {
        await desk.save({ parts: desk.plan.parts.toSpliced(index, 1) });
      }
      return desk.show();
    }),
};

/** Answers a tap about the plan that a place is in, and turns its message into the screen that this leads to. */
export function atDesk(
  tap: Tap,
  classId: string,
  place: number,
  read: (desk: PlanDesk) => Promise<Screen>,
): Promise<void> {
  return turn(tap, classId, async (scope) =>
    read(await openDesk(tap, scope, unpackPlace(place).week)),
  );
}

/** Changes one part and shows it. Where it is gone, the whole plan is shown. */
export async function change(
  desk: PlanDesk,
  place: number,
  to: (old: PlanPart) => PlanPart,
): Promise<Screen> {
  const { part: index } = unpackPlace(place);
  const old = desk.plan.parts[index];
  if (!old) return desk.show();
  const plan = { parts: desk.plan.parts.toSpliced(index, 1, to(old)) };
  await desk.save(plan);
  return planPartScreen(desk.schoolClass, plan, place);
}

/** A step was chosen: for a new part, in place of a part's, or to be mixed into one. */
async function choose(
  tap: Tap,
  { classId, part: place, rung }: { classId: string; part: number; rung: string },
): Promise<void> {
  const chosen = rungById(rung);
  if (!chosen) throw new AppError('invalid', 'week plan');
  const { week, part: wanted, slot } = unpackPlace(place);
  const scope = await teacherScope(tap.deps.store, tap.userId, classId);
  const desk = await openDesk(tap, scope, week);
  const { parts } = desk.plan;
  const index = Math.min(wanted, parts.length);
  const other = parts.findIndex(
    (part, at) => at !== index && rungsInPart(part).includes(chosen.id),
  );
  if (other >= 0) return tap.answer(alreadyInPlan(other), 'alert');
  const part = placed(parts[index], chosen, slot);
  if (part === null) {
    const problem = { part: index, kind: 'cannot_mix', value: chosen.id, min: 0, max: 0 } as const;
    return tap.answer(planProblem(problem), 'alert');
  }
  await tap.answer();
  if (index >= PLAN_LIMITS.parts.max) return tap.show(await desk.show());
  const plan = { parts: parts.toSpliced(index, 1, part) };
  await desk.save(plan);
  await tap.show(planPartScreen(desk.schoolClass, plan, packPlace({ week, part: index, slot: 0 })));
}

/** A part with a step in its place; null when that cannot be mixed in. */
function placed(old: PlanPart | undefined, rung: Rung, slot: number): PlanPart | null {
  const { id, cards, seconds } = rung;
  if (!old || slot === 0) return { rung: id, cards, seconds };
  try {
    return mixIn(old, id);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function choosingAt({ parts }: WeekPlan, place: number): Choosing {
  const part = parts[unpackPlace(place).part];
  return { part: place, present: part ? rungsInPart(part) : [] };
}

function strandOf(text: string): Strand | undefined {
  return STRANDS.find((strand) => strand === text);
}

/** As many cards as a part may have, and no more. */
export function fitCards(part: PlanPart, cards: number): number {
  return clamp(cards, { min: PLAN_LIMITS.cards.min, max: maxCardsOf(part) });
}

function clamp(value: number, { min, max }: { min: number; max: number }): number {
  return Math.min(max, Math.max(min, value));
}
