import { fitText } from '../media/fit-text.ts';
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

/** The workbook a sheet is about; `page` is where the child goes on, null where nobody is known to. */
export interface SheetBook {
  readonly title: string;
  readonly page: number | null;
}

/** A week of practice for one child; without a child it has a line for the name. `workbook` is null without one. */
export interface PracticeSheet {
  readonly child: { readonly number: number; readonly nickname: string } | null;
  readonly days: readonly PaperDay[];
  readonly workbook: SheetBook | null;
}

/** Sheets to print. `right` stands at the head of each: the class and the week. */
export interface PracticeInput {
  readonly sheets: readonly PracticeSheet[];
  readonly right: string;
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
 * const sheets = [{ child: null, days, workbook: null }];
 * practicePages({ sheets, right: '', paper: 'a4', words }).length; // => 1 for one day
 */
export function practicePages(input: PracticeInput): Page[] {
  if (input.sheets.length === 0 || input.sheets.some(({ days }) => days.length === 0)) {
    throw new RangeError('A practice sheet needs at least one school day.');
  }
  return input.sheets.flatMap((sheet) => sheetPages(sheet, input));
}

function sheetPages({ child, days, workbook }: PracticeSheet, input: PracticeInput): Page[] {
  const { paper, words, right } = input;
  const groups = days.map(
    (day): Group => [
      dayHeading(day.label, workbook !== null, input),
      ...day.tasks.map((task) => taskStrip(task, paper, words)),
    ],
  );
  const title = child
    ? `${child.number} · ${drawable(child.nickname, words.child(child.number))}`
    : `${words.name} ${'_'.repeat(24)}`;
  const strips = workbook ? [[bookStrip(workbook, input)], ...groups] : groups;
  return framed(flow(strips, { ...bodyOf(paper), gap: 6 }), {
    paper,
    title,
    right,
    footer: words.howToMark,
    pageOf: words.page,
  });
}

/** The workbook and where the child goes on in it. */
function bookStrip({ title, page }: SheetBook, { paper, words }: PracticeInput): Strip {
  const from = page === null ? '' : words.fromPage(page);
  const line = [drawable(title, ''), from].filter((part) => part !== '').join(' · ');
  const limits = { maxWidth: innerWidth(paper), size: 11, minSize: 8, weight: 400 } as const;
  const fitted = fitText(line, limits);
  return {
    height: 12,
    draw: (y) => text({ x: EDGE, y: y + 8, size: fitted.size }, fitted.text),
  };
}

/** The day, a box for the workbook's pages where there is one, and who was there. */
function dayHeading(label: string, hasBook: boolean, { paper, words }: PracticeInput): Strip {
  const end = EDGE + innerWidth(paper);
  const adult = end - blankWidth(words.adult, ADULT_BLANK);
  const pages = adult - BETWEEN - blankWidth(words.pagesDone, PAGES_BLANK);
  return {
    height: 26,
    draw: (y) =>
      [
        text({ x: EDGE, y: y + 17, size: 13, weight: 700 }, label),
        hasBook ? blankAfter(words.pagesDone, pages, y + 17, PAGES_BLANK) : '',
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
