import { type Rung, type RunRung, type Strand, strandTitle } from '../../drills/index.ts';
import { USUAL_SIGN } from './buttons.ts';
import { bold, lines, type Text } from './words.ts';

/** The grade that steps are marked for, in words, and whether any step shown is marked. */
export interface Legend {
  readonly grade: string | null;
  readonly isSeen: boolean;
}

const STEP_WORDS: Readonly<Record<number, string>> = {
  1: 'ones',
  2: 'twos',
  3: 'threes',
  4: 'fours',
  5: 'fives',
  10: 'tens',
};

/** Choosing what a part practises, or what is mixed into it. `grade` is the class's, in words. */
export function chooseStrand(grade: string | null, isMixed = false): Text {
  return lines(
    bold(isMixed ? 'What shall be mixed in?' : 'What shall be practised?'),
    isMixed ? 'Only what asks for the same kind of answer can be shuffled together.' : null,
    grade && hasUsual(grade),
  );
}

/** Choosing the step of a strand, on one of several pages. */
export function chooseStep(strand: Strand, legend: Legend, page: number, pages: number): Text {
  return lines(
    bold(`${capital(strandTitle(strand))}: which step?`),
    legendLine(legend),
    pages > 1 ? `Page ${page + 1} of ${pages}, easier steps first.` : null,
  );
}

/** Choosing what counting goes in. */
export function chooseGroup(legend: Legend): Text {
  const { grade, isSeen } = legend;
  return lines(
    bold('Counting: in what?'),
    grade !== null && isSeen ? hasUsual(grade) : legendLine(legend),
  );
}

/** Choosing how far a kind of counting goes, and which way. */
export function chooseLimit(run: RunRung, legend: Legend): Text {
  return lines(bold(`Counting ${kindOf(run, 3)}: how far?`), legendLine(legend));
}

/**
 * A step on a button below its strand's name. Counting leaves its first word out and says how far at the end: `in tens to 100`,
 * `back in tens (33, 23) within 100`.
 */
export function stepLabel(rung: Rung): string {
  if (rung.kind === 'facts') return rung.title;
  const back = rung.direction === 'back' ? 'back ' : '';
  return `${back}${kindOf(rung, 2)} ${limitOf(rung)}`;
}

/** A step on a button where its strand is not known: `count back in tens within 100`. */
export function wholeStepLabel(rung: Rung): string {
  return rung.kind === 'facts' ? rung.title : `count ${stepLabel(rung)}`;
}

/** A kind of counting, by its easiest run: `in tens (13, 23)`. */
export function groupLabel(run: RunRung): string {
  return kindOf({ ...run, direction: 'on' }, 2);
}

/** How far and which way, on a button below a kind of counting: `to 100`, `back within 100`. */
export function limitLabel(run: RunRung): string {
  return `${run.direction === 'back' ? 'back ' : ''}${limitOf(run)}`;
}

function limitOf({ direction, limit }: RunRung): string {
  return direction === 'on' ? `to ${limit}` : `within ${limit}`;
}

/** The step, with some numbers where they are no multiples of it, and what is gone over. */
function kindOf(run: RunRung, numbers: number): string {
  const like = run.starts === 'others' ? ` (${exampleOf(run, numbers).join(', ')})` : '';
  const over = run.crosses === undefined ? '' : ` across ${run.crosses}s`;
  return `in ${STEP_WORDS[run.step] ?? `${run.step}s`}${like}${over}`;
}

/** Three more than some multiples: `13, 23, 33`, or `33, 23, 13` backwards. */
function exampleOf({ step, direction }: RunRung, numbers: number): number[] {
  const up = [1, 2, 3].map((times) => times * step + 3);
  return (direction === 'on' ? up : up.toReversed()).slice(0, numbers);
}

function hasUsual(grade: string): string {
  return `${USUAL_SIGN} has steps usual in ${grade}`;
}

function legendLine({ grade, isSeen }: Legend): string | null {
  if (grade === null) return null;
  return isSeen ? `${USUAL_SIGN} usual in ${grade}` : `None of these is marked usual in ${grade}.`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
