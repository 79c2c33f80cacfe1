import { drawable, measure } from '../media/font.ts';
import { PALETTE } from '../media/palette.ts';
import { rule, text } from '../media/svg.ts';
import type { PaperWords } from '../texts/paper.ts';
import { flow, type Group, type Strip } from './flow.ts';
import type { Page } from './page.ts';
import { bodyOf, framed } from './page-frame.ts';
import { EDGE, innerWidth, type PaperSize } from './paper-size.ts';
import { type PaperTask, taskStrip } from './task-strip.ts';

/** One school day of a sheet; `label` is the day as it is read. */
export interface PaperDay {
  readonly label: string;
  readonly tasks: readonly PaperTask[];
}

/** A week of practice for one child; without a child it has a line for the name. */
export interface PracticeSheet {
  readonly child: { readonly number: number; readonly nickname: string } | null;
  readonly days: readonly PaperDay[];
}

/** Sheets to print. `right` stands at the head of each (the class and the week); `workbook` is its title, null without one. */
export interface PracticeInput {
  readonly sheets: readonly PracticeSheet[];
  readonly right: string;
  readonly workbook: string | null;
  readonly paper: PaperSize;
  readonly words: PaperWords;
}

const LABEL = 10;
const PAGES_BLANK = 44;
const ADULT_BLANK = 96;
const BETWEEN = 18;

/**
 * Practice sheets: for each school day the cards of each part with a box for the score, a box for workbook pages and a line for
 * the adult. A sheet holds one child's own work and nothing of anybody else's; each begins on a new page.
 *
 * @throws {RangeError} when there is no sheet, or one without a day.
 * @example
 * practicePages({ sheets: [{ child: null, days }], right: '', workbook: null, paper: 'a4', words }).length; // => 1 for one day
 */
export function practicePages(input: PracticeInput): Page[] {
  if (input.sheets.length === 0 || input.sheets.some(({ days }) => days.length === 0)) {
    throw new RangeError('A practice sheet needs at least one school day.');
  }
  return input.sheets.flatMap((sheet) => sheetPages(sheet, input));
}

function sheetPages({ child, days }: PracticeSheet, input: PracticeInput): Page[] {
  const { paper, words, right } = input;
  const groups = days.map(
    (day): Group => [
      dayHeading(day.label, input),
      ...day.tasks.map((task) => taskStrip(task, paper, words)),
    ],
  );
  const title = child
    ? `${child.number} · ${drawable(child.nickname, words.child(child.number))}`
    : `${words.name} ${'_'.repeat(24)}`;
  return framed(flow(groups, { ...bodyOf(paper), gap: 6 }), {
    paper,
    title,
    right,
    footer: words.howToMark,
    pageOf: words.page,
  });
}

/** The day, the workbook's pages where there is one, and who was there. */
function dayHeading(label: string, { paper, words, workbook }: PracticeInput): Strip {
  const end = EDGE + innerWidth(paper);
  const adult = end - blankWidth(words.adult, ADULT_BLANK);
  const pages = adult - BETWEEN - blankWidth(words.pagesDone, PAGES_BLANK);
  return {
    height: 26,
    draw: (y) =>
      [
        text({ x: EDGE, y: y + 17, size: 13, weight: 700 }, label),
        workbook === null ? '' : blankAfter(words.pagesDone, pages, y + 17, PAGES_BLANK),
        blankAfter(words.adult, adult, y + 17, ADULT_BLANK),
        rule([EDGE, y + 25], [end, y + 25], PALETTE.softInk, 0.75),
      ].join(''),
  };
}

function blankWidth(label: string, length: number): number {
  return measure(label, LABEL, 400) + 6 + length;
}

function blankAfter(label: string, x: number, y: number, length: number): string {
  const from = x + measure(label, LABEL, 400) + 6;
  return (
    text({ x, y, size: LABEL }, label) +
    rule([from, y + 2], [from + length, y + 2], PALETTE.ink, 0.75)
  );
}
