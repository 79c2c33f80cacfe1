import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { sheetHeading } from './heading.ts';
import { sheetFooter } from './sheet-footer.ts';
import { requireWeeks, type StrandWeeks, strandWeeks } from './strand-weeks.ts';
import { type PictureWords, pictureWords } from './words.ts';

/** A class's strands over 1 to 12 weeks, all its children's cards together. */
export interface TrendInput {
  readonly title: string;
  readonly weekLabels: readonly string[];
  readonly strands: readonly StrandWeeks[];
  readonly footer: string;
  readonly words?: PictureWords;
}

/**
 * How a class moves, for its teacher: the share right in each strand week by week, the latest one in figures.
 *
 * @throws {RangeError} when there are no or more than 12 weeks, when a strand has another number of weeks, or for a score that
 * cannot be.
 * @example
 * trendPicture({ title: '', weekLabels: ['3 Nov'], strands: [{ label: 'halves', weeks: [{ right: 8, asked: 10 }] }], footer: '' }).svg; // contains '80%'
 */
export function trendPicture(input: TrendInput): Drawing {
  const { words = pictureWords() } = input;
  requireWeeks(input.weekLabels, input.strands);
  const heading = sheetHeading(input.title);
  const strands = strandWeeks(input.strands, input.weekLabels, heading.bottom, ({ right, asked }) =>
    words.percent(Math.round((100 * right) / asked)),
  );
  const footer = sheetFooter(input.footer, strands.bottom);
  return drawingOf(PHONE_WIDTH, footer.bottom + MARGIN, heading.svg + strands.svg + footer.svg);
}
