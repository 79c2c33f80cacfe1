import type { SchoolClass } from '../../db/index.ts';
import {
  estimateMinutes,
  type PlanPart,
  type PlanProblem,
  type Rung,
  rungById,
  type WeekPlan,
} from '../../drills/index.ts';
import { rungTitle } from './evening.ts';
import { bold, count, lines, name, type Text } from './words.ts';

/** One line of a plan: `bonds to 10: 10 cards, 3 s each`. */
export function planLine(part: PlanPart): string {
  return `${rungTitle(part.rung)}: ${size(part)}`;
}

function size({ rung, cards, seconds }: PlanPart): string {
  const isRun = rungById(rung)?.kind === 'run';
  const amount = isRun ? count(cards, 'number', 'numbers') : count(cards, 'card', 'cards');
  return `${amount}, ${seconds} s each`;
}

/** The week plan, or the changes to it. */
export function planScreen(schoolClass: SchoolClass, plan: WeekPlan, isDraft: boolean): Text {
  return lines(
    bold(`${name(schoolClass.title)}: week plan`),
    ...plan.parts.map((part, index) => `${index + 1}. ${planLine(part)}`),
    plan.parts.length === 0
      ? 'Nothing yet. Add a part.'
      : `About ${count(estimateMinutes(plan), 'minute', 'minutes')} an evening.`,
    isDraft ? bold('Changed, not in use yet.') : null,
  );
}

/** One part of the plan. */
export function planPartScreen(part: PlanPart, rung: Rung): Text {
  return lines(
    bold(planLine(part)),
    `Usual: ${size({ ...rung, rung: rung.id })}.`,
    `Source: ${rung.source}.`,
  );
}

/** Choosing what a part practises. */
export function chooseStrand(): Text {
  return lines('What shall be practised?');
}

/** Choosing the step of a strand. */
export function chooseRung(): Text {
  return lines('Which step?');
}

/** After the plan is put in use. */
export function planInUse(): Text {
  return lines('In use from the next evening. Drills already sent stay as they are.');
}

/** Why a plan cannot be used. */
export function planProblem(problem: PlanProblem): string {
  const at = `Part ${problem.part + 1}`;
  switch (problem.kind) {
    case 'empty':
      return 'The plan needs at least one part. Add one first.';
    case 'too_many_parts':
      return `${problem.value} parts are too many: at most ${problem.max}. Remove one.`;
    case 'cards':
      return `${at}: ${problem.value} cards; from ${problem.min} to ${problem.max} fit.`;
    case 'seconds':
      return `${at}: ${problem.value} seconds; from ${problem.min} to ${problem.max} fit.`;
    case 'same_rung_twice':
      return `${at} practises the same as another part. Choose something else.`;
    case 'unknown_rung':
      return `${at} practises something this version does not know. Choose again.`;
  }
}
