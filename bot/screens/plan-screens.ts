import type { SchoolClass } from '../../db/index.ts';
import { PLAN_LIMITS, type WeekPlan } from '../../drills/index.ts';
import { packPlace, unpackPlace } from '../callback/plan-place.ts';
import { BUTTONS, gradeButton } from '../texts/buttons.ts';
import { gradeName } from '../texts/grades.ts';
import { partLabel } from '../texts/plan.ts';
import { type PlanStand, planScreen as planScreenText } from '../texts/plan-stand.ts';
import { back } from './class-screens.ts';
import { NEW_PREVIEW } from './preview-state.ts';
import { type Button, button, type Screen } from './screen.ts';
import { undoButton } from './undo.ts';

/** Everything the week plan's screen is drawn from. `act` is what was just done and can be taken back. */
export interface PlanView extends PlanStand {
  readonly schoolClass: SchoolClass;
  readonly plan: WeekPlan;
  readonly act?: string | null;
}

/** The week plan, part by part, and where another one can be taken from. */
export function planScreen(view: PlanView): Screen {
  const { schoolClass, plan, draft, active, term, act } = view;
  const { id: classId } = schoolClass;
  const from = (label: string, source: string) =>
    button(label, { kind: 'planSource', classId, from: source });
  const sources = [
    ...(active ? [from(BUTTONS.fromLastWeek, 'last'), from(BUTTONS.fromDigest, 'digest')] : []),
    ...(term ? [from(BUTTONS.fromTerm, 'term')] : []),
  ];
  const grade = button(gradeButton(gradeName(schoolClass)), { kind: 'curriculum', classId });
  const use = button(BUTTONS.usePlan, { kind: 'planUse', classId });
  const drop = button(BUTTONS.dropPlan, { kind: 'planDrop', classId });
  const toTerm = term
    ? button(BUTTONS.term, { kind: 'term', classId, page: 0 })
    : button(BUTTONS.newTerm, { kind: 'term', classId, page: 0 });
  const preview = button(BUTTONS.preview, { kind: 'preview', classId, at: NEW_PREVIEW });
  return {
    text: planScreenText(schoolClass, plan, view),
    buttons: [
      ...partRows(classId, plan, 0),
      ...(plan.parts.length < PLAN_LIMITS.parts.max
        ? [[button(BUTTONS.addPart, { kind: 'planAdd', classId })]]
        : []),
      ...(plan.parts.length === 0
        ? [[button(BUTTONS.firstPlan, { kind: 'firstPlan', classId, curriculum: 'guess' })]]
        : []),
      ...(draft ? [[use, ...(active ? [drop] : [])]] : []),
      ...(sources.length > 0 ? [sources] : []),
      // A screen has ten rows at most: what can be taken back is worth more at this moment than the grade.
      act ? [undoButton(act)] : [grade],
      [...(plan.parts.length > 0 ? [preview] : []), toTerm, back(classId)],
    ],
  };
}

/** A button for each part of a plan; `week` is 0 for the week plan, or the week of the term. */
export function partRows(classId: string, plan: WeekPlan, week: number): Button[][] {
  return plan.parts.map((part, index) => [
    button(partLabel(part, index), {
      kind: 'planPart',
      classId,
      part: packPlace({ week, part: index, slot: 0 }),
    }),
  ]);
}

/** The way back to the plan that a place is in: the week plan, or a week of the term. */
export function toPlan(classId: string, place: number): Button {
  const { week } = unpackPlace(place);
  return week === 0
    ? button(BUTTONS.back, { kind: 'plan', classId })
    : button(BUTTONS.back, { kind: 'termWeek', classId, week });
}
