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
import { say } from '../language/index.ts';
import { partTitle, rungTitle } from './part-title.ts';
import { wholeStepLabel } from './steps.ts';
import { bold, lines, listOf, type Text } from './words.ts';

/** Sources a phone shows at a glance. */
const SOURCES_SHOWN = 4;

/** One line of a plan: `adding within 10: 10 cards, 3 s each`. */
export function planLine(part: PlanPart): string {
  return say('plan-line', { part: partTitle(part), size: size(part) });
}

/** A part on a button, short enough for a phone; its size stands in the text above: `1. count in tens to 100`. */
export function partLabel({ rung, also = [] }: PlanPart, index: number): string {
  const known = rungById(rung);
  const step = known ? wholeStepLabel(known) : rungTitle(rung);
  const label = also.length > 0 ? say('plan-and-more', { step, count: also.length }) : step;
  return `${index + 1}. ${label}`;
}

function size({ rung, cards, seconds }: PlanPart): string {
  const isRun = rungById(rung)?.kind === 'run';
  const amount = isRun
    ? say('plan-numbers', { count: cards })
    : say('plan-cards', { count: cards });
  return say('plan-size', { amount, seconds });
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
    say('plan-usual-size', { size: size({ ...rung, rung: rung.id }) }),
    ...basisLines(basis, rung),
  );
}

/** A part that mixes steps: what each of them is. */
export function mixedPartScreen(part: PlanPart, bases: readonly MixedBasis[]): Text {
  return lines(
    bold(planLine(part)),
    say('plan-shuffled'),
    ...bases.map(({ title, basis }) => `• ${mixedStep(title, basis)}`),
  );
}

/** One step of a mixed part, and what the class's curriculum says of it. */
export interface MixedBasis {
  readonly title: string;
  readonly basis: Basis;
}

function mixedStep(step: string, { grade, statement }: Basis): string {
  if (grade === null) return step;
  return statement
    ? say('plan-step-usual', { step, grade })
    : say('plan-step-not-usual', { step, grade });
}

/** A step that another part of the plan has already; `part` counts from 0. */
export function alreadyInPlan(part: number): string {
  return say('plan-already-there', { part: part + 1 });
}

/** Parts that would be too many once a mixed one is taken apart. */
export function noRoomApart(parts: number): string {
  const { max } = PLAN_LIMITS.parts;
  return say('plan-no-room-apart', { parts, max });
}

/** Why a whole plan cannot be taken from somewhere. */
export const NO_SOURCE_PLAN = {
  get last() {
    return say('plan-none-last');
  },
  get digest() {
    return say('plan-none-digest');
  },
  get term() {
    return say('plan-none-term');
  },
  get same() {
    return say('plan-none-same');
  },
};

function basisLines({ grade, statement, usualIn }: Basis, rung: Rung): string[] {
  if (grade === null) return sourceLines(rung);
  if (statement) {
    return [
      say('plan-statement', { grade, statement: statement.text }),
      say('plan-source', { source: placeOf(statement) }),
    ];
  }
  const others = listOf(usualIn.map(({ label }) => label));
  const usual = others
    ? say('plan-usual-elsewhere', { grade, others })
    : say('plan-not-usual', { grade });
  return [usual, ...sourceLines(rung)];
}

/** Where a statement stands, as it was published, and how sure we are of it. */
function placeOf({ document, code, status }: Statement): string {
  const doubt = status === 'found' ? [] : [say(`plan-doubt-${status}`)];
  return [document, ...(code ? [code] : []), ...doubt].join(', ');
}

function sourceLines({ sources }: Rung): string[] {
  const [first] = sources;
  if (first === undefined || first === NO_SOURCE) return [say('plan-no-source')];
  const others = sources.length - SOURCES_SHOWN;
  return [
    say('plan-asked-for'),
    ...sources.slice(0, SOURCES_SHOWN).map((source) => `• ${source}`),
    ...(others > 0 ? [say('plan-other-places', { count: others })] : []),
  ];
}

/** After the plan is put in use. */
export function planInUse(): Text {
  return lines(say('plan-put-in-use'));
}

/** Why a plan cannot be used. */
export function planProblem(problem: PlanProblem): string {
  const { value, min, max } = problem;
  const part = problem.part + 1;
  switch (problem.kind) {
    case 'empty':
      return say('plan-problem-empty');
    case 'too_many_parts':
      return say('plan-problem-parts', { value, max });
    case 'cards':
      return say('plan-problem-cards', { part, value, min, max });
    case 'seconds':
      return say('plan-problem-seconds', { part, value, min, max });
    case 'same_rung_twice':
      return say('plan-problem-twice', { part });
    case 'too_many_mixed':
      return say('plan-problem-mixed', { part, value, max });
    case 'cannot_mix':
      return say('plan-problem-unlike', { part });
    case 'unknown_rung':
      return say('plan-problem-unknown', { part });
  }
}
