import {
  type Grade,
  NO_SOURCE,
  PLAN_LIMITS,
  type PlanPart,
  type PlanProblem,
  type Rung,
  rungById,
  type Statement,
  type WeekPlan,
} from '../../drills/index.ts';
import { partTitle, rungTitle } from './part-title.ts';
import { wholeStepLabel } from './steps.ts';
import { bold, count, lines, listOf, type Text } from './words.ts';

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
  return `${partTitle(part)}: ${size(part)}`;
}

/** A part on a button, short enough for a phone; its size stands in the text above: `1. count in tens to 100`. */
export function partLabel({ rung, also = [] }: PlanPart, index: number): string {
  const known = rungById(rung);
  const label = known ? wholeStepLabel(known) : rungTitle(rung);
  return `${index + 1}. ${label}${also.length > 0 ? ` and ${also.length} more` : ''}`;
}

function size({ rung, cards, seconds }: PlanPart): string {
  const isRun = rungById(rung)?.kind === 'run';
  const amount = isRun ? count(cards, 'number', 'numbers') : count(cards, 'card', 'cards');
  return `${amount}, ${seconds} s each`;
}

/** The parts of a plan, a line each. */
export function partLines(plan: WeekPlan): string[] {
  return plan.parts.map((part, index) => `${index + 1}. ${planLine(part)}`);
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

/** A part that mixes steps: what each of them is. */
export function mixedPartScreen(part: PlanPart, bases: readonly MixedBasis[]): Text {
  return lines(
    bold(planLine(part)),
    'Their cards come shuffled, about as many of each.',
    ...bases.map(({ title, basis }) => `• ${title}${usualWords(basis)}`),
  );
}

/** One step of a mixed part, and what the class's curriculum says of it. */
export interface MixedBasis {
  readonly title: string;
  readonly basis: Basis;
}

function usualWords({ grade, statement }: Basis): string {
  if (grade === null) return '';
  return statement ? `, usual in ${grade}` : `, not marked usual in ${grade}`;
}

/** A step that another part of the plan has already; `part` counts from 0. */
export function alreadyInPlan(part: number): string {
  return `Part ${part + 1} practises that already. Choose something else.`;
}

/** Parts that would be too many once a mixed one is taken apart. */
export function noRoomApart(parts: number): string {
  const { max } = PLAN_LIMITS.parts;
  return `Apart that makes ${parts} parts, and ${max} are the most. Remove another part first.`;
}

/** Why a whole plan cannot be taken from somewhere. */
export const NO_SOURCE_PLAN = {
  last: 'No plan was in use last week.',
  digest: 'The digest proposes no change of this plan yet.',
  term: 'The term has no plan for the next evening.',
  same: 'That is the plan in use already.',
} as const;

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
    case 'too_many_mixed':
      return `${at} mixes ${problem.value} steps; at most ${problem.max} fit. Take one out.`;
    case 'cannot_mix':
      return `${at}: these steps ask for different things and cannot be shuffled. Keep them apart.`;
    case 'unknown_rung':
      return `${at} practises something this version does not know. Choose again.`;
  }
}
