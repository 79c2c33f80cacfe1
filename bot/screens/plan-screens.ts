import type { SchoolClass } from '../../db/index.ts';
import { maxCards, PLAN_LIMITS, rungById, type WeekPlan } from '../../drills/index.ts';
import { amountButton, BUTTONS, gradeButton, secondsButton } from '../texts/buttons.ts';
import { gradeName } from '../texts/grades.ts';
import * as texts from '../texts/plan.ts';
import { chooseStrand } from '../texts/steps.ts';
import { back } from './class-screens.ts';
import { type Button, button, type Screen } from './screen.ts';
import { usualGrades, usualSteps } from './usual-steps.ts';

/** The week plan, part by part. `isDraft` says that it differs from the plan in use. */
export function planScreen(schoolClass: SchoolClass, plan: WeekPlan, isDraft: boolean): Screen {
  const { id: classId } = schoolClass;
  const add: Button[][] =
    plan.parts.length < PLAN_LIMITS.parts.max
      ? [[button(BUTTONS.addPart, { kind: 'planAdd', classId })]]
      : [];
  return {
    text: texts.planScreen(schoolClass, plan, isDraft),
    buttons: [
      ...plan.parts.map((part, index) => [
        button(texts.partLabel(part, index), { kind: 'planPart', classId, part: index }),
      ]),
      ...add,
      [button(gradeButton(gradeName(schoolClass)), { kind: 'curriculum', classId })],
      ...(isDraft ? [[button(BUTTONS.usePlan, { kind: 'planUse', classId })]] : []),
      [back(classId)],
    ],
  };
}

/** One part: more or fewer cards, more or less time, something else, or nothing. */
export function planPartScreen(schoolClass: SchoolClass, plan: WeekPlan, index: number): Screen {
  const { id: classId } = schoolClass;
  const part = plan.parts[index];
  const rung = part && rungById(part.rung);
  if (!part || !rung) return { text: chooseStrand(null), buttons: [[toPlan(classId)]] };
  const at = { classId, part: index };
  const word = rung.kind === 'run' ? 'numbers' : 'cards';
  const { min: fewest } = PLAN_LIMITS.cards;
  const { min: quickest, max: slowest } = PLAN_LIMITS.seconds;
  const cards = (by: number): Button[] => {
    const value = part.cards + by;
    if (value < fewest || value > maxCards(rung)) return [];
    return [button(amountButton(by, word), { kind: 'planCards', ...at, cards: value })];
  };
  const seconds = (by: 1 | -1): Button[] => {
    const value = part.seconds + by;
    if (value < quickest || value > slowest) return [];
    return [button(secondsButton(by), { kind: 'planSeconds', ...at, seconds: value })];
  };
  return {
    text: texts.planPartScreen(part, rung, {
      grade: gradeName(schoolClass),
      statement: usualSteps(schoolClass).get(rung.id) ?? null,
      usualIn: usualGrades(schoolClass, rung.id),
    }),
    buttons: [
      [...cards(-1), ...cards(1)],
      [...cards(-5), ...cards(5)],
      [...seconds(-1), ...seconds(1)],
      [button(BUTTONS.changeRung, { kind: 'planStrand', ...at, strand: rung.strand })],
      [button(BUTTONS.removePart, { kind: 'planRemove', ...at, rung: part.rung })],
      [toPlan(classId)],
    ].filter((row) => row.length > 0),
  };
}

/** The way back to the week plan. */
export function toPlan(classId: string): Button {
  return button(BUTTONS.back, { kind: 'plan', classId });
}
