import type { SchoolClass } from '../../db/index.ts';
import {
  estimateMinutes,
  type Grade,
  NO_SOURCE,
  type PlanPart,
  type PlanProblem,
  type Rung,
  rungById,
  type Statement,
  type WeekPlan,
} from '../../drills/index.ts';
import { rungTitle } from './evening.ts';
import { wholeStepLabel } from './steps.ts';
import { bold, count, lines, listOf, name, type Text } from './words.ts';

/** How sure we are of a statement. */
const DOUBT = {
  found: [],
  secondary: ['read in a summary only'],
  memory: ['from memory, please check'],
} as const;

/** Sources a phone shows at a glance. */
const SOURCES_SHOWN = 4;

/** One line of a plan: `adding within 10: 10 cards, 3 s each`. */
export function planLine(part: PlanPart): string {
  return `${rungTitle(part.rung)}: ${size(part)}`;
}

/** A part on a button, short enough for a phone; its size stands in the text above: `1. count in tens to 100`. */
export function partLabel({ rung }: PlanPart, index: number): string {
  const known = rungById(rung);
  return `${index + 1}. ${known ? wholeStepLabel(known) : rungTitle(rung)}`;
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

/** What a class's curriculum says of a step. `grade` is the class's in words and null while none is chosen. */
export interface Basis {
  readonly grade: string | null;
  /** What the step rests on where it is usual in the grade. */
  readonly statement: Statement | null;
  /** The grades of that curriculum in which it is usual. */
  readonly usualIn: readonly Grade[];
}

/** One part of the plan, and where its step is asked for. */
export function planPartScreen(part: PlanPart, rung: Rung, basis: Basis): Text {
  return lines(
    bold(planLine(part)),
    `Usual size: ${size({ ...rung, rung: rung.id })}.`,
    ...basisLines(basis, rung),
  );
}

function basisLines({ grade, statement, usualIn }: Basis, rung: Rung): string[] {
  if (grade === null) return sourceLines(rung);
  if (statement) {
    const place = [statement.document, ...(statement.code ? [statement.code] : [])];
    return [
      `${grade}: ${statement.text}.`,
      `In our words; ${[...place, ...DOUBT[statement.status]].join(', ')}.`,
    ];
  }
  const others = listOf(usualIn.map(({ label }) => label));
  return [
    `Not marked usual in ${grade}${others ? `, but in ${others}` : ''}.`,
    ...sourceLines(rung),
  ];
}

function sourceLines({ sources }: Rung): string[] {
  const [first] = sources;
  if (first === undefined || first === NO_SOURCE) return ['No published source: common practice.'];
  const others = sources.length - SOURCES_SHOWN;
  return [
    'Asked for, in our words:',
    ...sources.slice(0, SOURCES_SHOWN).map((source) => `• ${source}`),
    ...(others > 0 ? [`and ${count(others, 'other place', 'other places')}`] : []),
  ];
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
