import type { SchoolClass } from '../../db/index.ts';
import {
  maxCards,
  PLAN_LIMITS,
  rungById,
  rungsOf,
  STRANDS,
  type Strand,
  strandTitle,
  type WeekPlan,
} from '../../drills/index.ts';
import { amountButton, BUTTONS, secondsButton } from '../texts/buttons.ts';
import * as texts from '../texts/plan.ts';
import { back } from './class-screens.ts';
import { type Button, button, rows, type Screen } from './screen.ts';

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
        button(`${index + 1}. ${texts.planLine(part)}`, { kind: 'planPart', classId, part: index }),
      ]),
      ...add,
      ...(isDraft ? [[button(BUTTONS.usePlan, { kind: 'planUse', classId })]] : []),
      [back(classId)],
    ],
  };
}

/** One part: more or fewer cards, more or less time, something else, or nothing. */
export function planPartScreen(classId: string, plan: WeekPlan, index: number): Screen {
  const part = plan.parts[index];
  const rung = part && rungById(part.rung);
  if (!part || !rung) return { text: texts.chooseStrand(), buttons: [[toPlan(classId)]] };
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
    text: texts.planPartScreen(part, rung),
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

/** What a new part practises. `index` is the place the part will have. */
export function chooseStrandScreen(classId: string, index: number): Screen {
  const strands = STRANDS.map((strand) =>
    button(strandTitle(strand), { kind: 'planStrand', classId, part: index, strand }),
  );
  return { text: texts.chooseStrand(), buttons: [...rows(strands, 2), [toPlan(classId)]] };
}

/** Which step of a strand a part practises. */
export function chooseRungScreen(classId: string, index: number, strand: Strand): Screen {
  const rungs = rungsOf(strand).map((rung) => [
    button(rung.title, { kind: 'planRung', classId, part: index, rung: rung.id }),
  ]);
  return {
    text: texts.chooseRung(),
    buttons: [
      ...rungs,
      [button(BUTTONS.allStrands, { kind: 'planStrand', classId, part: index, strand: 'all' })],
      [toPlan(classId)],
    ],
  };
}

function toPlan(classId: string): Button {
  return button(BUTTONS.back, { kind: 'plan', classId });
}
