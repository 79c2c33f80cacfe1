import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { type Stretch, sheetHeading } from './heading.ts';
import { PALETTE } from './palette.ts';
import { sheetFooter } from './sheet-footer.ts';
import { requireWeeks, type StrandWeeks, strandWeeks } from './strand-weeks.ts';
import { num, text } from './svg.ts';
import { type PictureWords, pictureWords } from './words.ts';

/** One child's own term: how many evenings were practised, and each strand's own scores over 1 to 12 weeks. */
export interface ProgressInput {
  readonly title: string;
  readonly evenings: number;
  readonly weekLabels: readonly string[];
  readonly strands: readonly StrandWeeks[];
  readonly footer: string;
  readonly words?: PictureWords;
}

const DOT = 6;
const DOT_PITCH = 20.5;
const DOTS_IN_ROW = 16;

/**
 * A child's own past, for the family: a dot for every evening practised, with no place left empty for one that was not, so nothing
 * can break; then each strand week by week. No other child is in it, and nothing is marked as bad.
 *
 * @throws {RangeError} when `evenings` is not a whole number from 0 to 400, when there are no or more than 12 weeks, when a strand
 * has another number of weeks, or for a score that cannot be.
 * @example
 * progressPicture({ title: 'Wren', evenings: 23, weekLabels: ['3 Nov'], strands: [], footer: '' }).svg; // contains '23 evenings'
 */
export function progressPicture(input: ProgressInput): Drawing {
  const { evenings, words = pictureWords() } = input;
  if (!Number.isInteger(evenings) || evenings < 0 || evenings > 400) {
    throw new RangeError(`Got ${evenings} evenings: a term has a whole number from 0 to 400.`);
  }
  requireWeeks(input.weekLabels, input.strands);
  const heading = sheetHeading(input.title);
  const term = termDots(evenings, heading.bottom, words);
  const strands = strandWeeks(input.strands, input.weekLabels, term.bottom, ({ right, asked }) =>
    words.score(right, asked),
  );
  const footer = sheetFooter(input.footer, strands.bottom);
  const body = heading.svg + term.svg + strands.svg + footer.svg;
  return drawingOf(PHONE_WIDTH, footer.bottom + MARGIN, body);
}

function termDots(evenings: number, top: number, words: PictureWords): Stretch {
  const y = top + 18;
  const dots = Array.from({ length: evenings }, (_, i) => {
    const cx = MARGIN + DOT + (i % DOTS_IN_ROW) * DOT_PITCH;
    const cy = y + 22 + Math.floor(i / DOTS_IN_ROW) * DOT_PITCH;
    return `<circle cx="${num(cx)}" cy="${num(cy)}" r="${DOT}" fill="${PALETTE.accent}"/>`;
  });
  const rows = Math.ceil(evenings / DOTS_IN_ROW);
  return {
    svg: text({ x: MARGIN, y, size: 20, weight: 700 }, words.evenings(evenings)) + dots.join(''),
    bottom: y + 22 + rows * DOT_PITCH,
  };
}
