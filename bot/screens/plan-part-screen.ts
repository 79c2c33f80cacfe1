import type { SchoolClass } from '../../db/index.ts';
import {
  canMix,
  MIXED_RUNGS,
  maxCardsOf,
  PLAN_LIMITS,
  type PlanPart,
  type Rung,
  rungById,
  rungsInPart,
  type WeekPlan,
} from '../../drills/index.ts';
import { packPlace, unpackPlace } from '../callback/plan-place.ts';
import { amountButton, BUTTONS, secondsButton, takeOutButton } from '../texts/buttons.ts';
import { gradeName } from '../texts/grades.ts';
import { rungTitle } from '../texts/part-title.ts';
import * as texts from '../texts/plan.ts';
import { chooseStrand, wholeStepLabel } from '../texts/steps.ts';
import { toPlan } from './plan-screens.ts';
import { type Button, button, type Screen } from './screen.ts';
import { usualGrades, usualSteps } from './usual-steps.ts';

/** One part, at its place: more or fewer cards, more or less time, mixed or kept apart, something else, or nothing. */
export function planPartScreen(schoolClass: SchoolClass, plan: WeekPlan, place: number): Screen {
  const { id: classId } = schoolClass;
  const { week, part: index } = unpackPlace(place);
  const part = plan.parts[index];
  const rungs = part ? rungsInPart(part).flatMap((id) => rungById(id) ?? []) : [];
  const [rung] = rungs;
  if (!part || !rung) {
    return { text: chooseStrand(null), buttons: [[toPlan(classId, place)]] };
  }
  const at = { classId, part: packPlace({ week, part: index, slot: 0 }) };
  return {
    text: textOf(schoolClass, part, rungs),
    buttons: [
      ...sizeRows(at, part, rung),
      [button(BUTTONS.changeRung, { kind: 'planStrand', ...at, strand: rung.strand })],
      mixButton(classId, place, rungs),
      ...apartRows(at, rungs),
      [button(BUTTONS.removePart, { kind: 'planRemove', ...at, rung: part.rung })],
      [toPlan(classId, place)],
    ].filter((row) => row.length > 0),
  };
}

interface At {
  readonly classId: string;
  readonly part: number;
}

function sizeRows(at: At, part: PlanPart, rung: Rung): Button[][] {
  const word = rung.kind === 'run' ? 'numbers' : 'cards';
  const { min: fewest } = PLAN_LIMITS.cards;
  const { min: quickest, max: slowest } = PLAN_LIMITS.seconds;
  const cards = (by: number): Button[] => {
    const value = part.cards + by;
    if (value < fewest || value > maxCardsOf(part)) return [];
    return [button(amountButton(by, word), { kind: 'planCards', ...at, cards: value })];
  };
  const seconds = (by: 1 | -1): Button[] => {
    const value = part.seconds + by;
    if (value < quickest || value > slowest) return [];
    return [button(secondsButton(by), { kind: 'planSeconds', ...at, seconds: value })];
  };
  return [
    [...cards(-1), ...cards(1)],
    [...cards(-5), ...cards(5)],
    [...seconds(-1), ...seconds(1)],
  ];
}

/** A step can be mixed in while there is room, and where there is any that asks for the same kind of answer. */
function mixButton(classId: string, place: number, rungs: readonly Rung[]): Button[] {
  const [first] = rungs;
  if (!first || rungs.length >= MIXED_RUNGS || !canMix(first.strand, first.strand)) return [];
  const part = packPlace({ ...unpackPlace(place), slot: rungs.length });
  return [button(BUTTONS.mixIn, { kind: 'planStrand', classId, part, strand: 'all' })];
}

function apartRows(at: At, rungs: readonly Rung[]): Button[][] {
  if (rungs.length < 2) return [];
  return [
    ...rungs
      .slice(1)
      .map((rung) => [
        button(takeOutButton(wholeStepLabel(rung)), { kind: 'planTakeOut', ...at, rung: rung.id }),
      ]),
    [button(BUTTONS.keepApart, { kind: 'planApart', ...at, rungs: rungs.length })],
  ];
}

function textOf(schoolClass: SchoolClass, part: PlanPart, rungs: readonly Rung[]) {
  const [rung] = rungs;
  const basisOf = ({ id }: Rung): texts.Basis => ({
    grade: gradeName(schoolClass),
    statement: usualSteps(schoolClass).get(id) ?? null,
    usualIn: usualGrades(schoolClass, id),
  });
  return rung && rungs.length === 1
    ? texts.planPartScreen(part, rung, basisOf(rung))
    : texts.mixedPartScreen(
        part,
        rungs.map((each) => ({ title: rungTitle(each.id), basis: basisOf(each) })),
      );
}
