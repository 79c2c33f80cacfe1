import type { Rung, RunRung, Strand } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { USUAL_SIGN } from './buttons.ts';
import { capital } from './capital.ts';
import { rungTitle, strandName } from './part-title.ts';
import { bold, lines, type Text } from './words.ts';

/** The grade that steps are marked for, in words, and whether any step shown is marked. */
export interface Legend {
  readonly grade: string | null;
  readonly isSeen: boolean;
}

/** Choosing what a part practises, or what is mixed into it. `grade` is the class's, in words. */
export function chooseStrand(grade: string | null, isMixed = false): Text {
  return lines(
    bold(isMixed ? say('steps-mixed-in') : say('steps-practised')),
    isMixed ? say('steps-same-kind') : null,
    grade && hasUsual(grade),
  );
}

/** Choosing the step of a strand, on one of several pages. */
export function chooseStep(strand: Strand, legend: Legend, page: number, pages: number): Text {
  return lines(
    bold(say('steps-which', { strand: capital(strandName(strand)) })),
    legendLine(legend),
    pages > 1 ? say('steps-page', { page: page + 1, pages }) : null,
  );
}

/** Choosing what counting goes in. */
export function chooseGroup(legend: Legend): Text {
  const { grade, isSeen } = legend;
  return lines(
    bold(say('steps-counting-in')),
    grade !== null && isSeen ? hasUsual(grade) : legendLine(legend),
  );
}

/** Choosing how far a kind of counting goes, and which way. */
export function chooseLimit(run: RunRung, legend: Legend): Text {
  return lines(bold(say('steps-how-far', { steps: kindOf(run, 3) })), legendLine(legend));
}

/**
 * A step on a button below its strand's name. Counting leaves its first word out and says how far at the end: `in tens to 100`,
 * `back in tens (33, 23) within 100`.
 */
export function stepLabel(rung: Rung): string {
  if (rung.kind === 'facts') return rungTitle(rung.id);
  return say(`steps-label-${rung.direction}`, { steps: kindOf(rung, 2), limit: rung.limit });
}

/** A step on a button where its strand is not known: `count back in tens within 100`. */
export function wholeStepLabel(rung: Rung): string {
  if (rung.kind === 'facts') return rungTitle(rung.id);
  return say(`steps-whole-${rung.direction}`, { steps: kindOf(rung, 2), limit: rung.limit });
}

/** A kind of counting, by its easiest run: `in tens (13, 23)`. */
export function groupLabel(run: RunRung): string {
  return kindOf({ ...run, direction: 'on' }, 2);
}

/** How far and which way, on a button below a kind of counting: `to 100`, `back within 100`. */
export function limitLabel({ direction, limit }: RunRung): string {
  return say(`steps-limit-${direction}`, { limit });
}

/** The step, with some numbers where they are no multiples of it, and what is gone over. */
function kindOf(run: RunRung, numbers: number): string {
  const size = say('steps-size', { step: run.step });
  const isOff = run.starts === 'others';
  const like = { steps: size, numbers: exampleOf(run, numbers).join(', ') };
  const steps = isOff ? say('steps-like', like) : size;
  return run.crosses === undefined ? steps : say('steps-across', { steps, number: run.crosses });
}

/** Three more than some multiples: `13, 23, 33`, or `33, 23, 13` backwards. */
function exampleOf({ step, direction }: RunRung, numbers: number): number[] {
  const up = [1, 2, 3].map((times) => times * step + 3);
  return (direction === 'on' ? up : up.toReversed()).slice(0, numbers);
}

function hasUsual(grade: string): string {
  return say('steps-has-usual', { sign: USUAL_SIGN, grade });
}

function legendLine({ grade, isSeen }: Legend): string | null {
  if (grade === null) return null;
  return isSeen
    ? say('steps-usual', { sign: USUAL_SIGN, grade })
    : say('steps-none-usual', { grade });
}
