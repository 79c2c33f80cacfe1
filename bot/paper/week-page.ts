import { PALETTE } from '../media/palette.ts';
import { rule } from '../media/svg.ts';
import type { Strip } from './flow.ts';
import type { Page } from './page.ts';
import { bodyOf, framed } from './page-frame.ts';
import { EDGE, innerWidth, type PaperSize } from './paper-size.ts';
import { beside, paragraph, stack } from './paragraph.ts';
import { type WeekGrid, weekGrid } from './week-grid.ts';

/** A heading with its lines of words. */
export interface Passage {
  readonly title: string;
  readonly lines: readonly string[];
}

/** A class's week on one page: the answer first, two columns of words, and the grid of its children below. */
export interface WeekPageInput {
  readonly title: string;
  readonly right: string;
  readonly answer: string;
  readonly under: string;
  readonly left: readonly Passage[];
  readonly beside: readonly Passage[];
  readonly grid: WeekGrid;
  readonly footer: string;
  readonly paper: PaperSize;
}

const COLUMN_GAP = 22;
const SIZE = 9;
/** A row of the grid that reads well, in points, and what its head and legend take. */
const GOOD_ROW = 14;
const GRID_REST = 52;
/** Words have at least this share of the page, and the grid at least the other. */
const WORDS_SHARE = { least: 0.27, most: 0.5 };
const MOST_LINES = 9;
/** A heading says nothing without a line of its own, and a sign that there is more. */
const FEWEST_LINES = 2;

/**
 * One page, whatever the class: words that leave the grid too little room are cut short, line by line from the longer column.
 *
 * @example
 * weekPage(input).length; // => 1
 */
export function weekPage(input: WeekPageInput): Page[] {
  const { paper, grid } = input;
  const { top, bottom } = bodyOf(paper);
  const height = bottom - top;
  const left = height - grid.rows.length * GOOD_ROW - GRID_REST;
  const most = Math.max(height * WORDS_SHARE.least, Math.min(height * WORDS_SHARE.most, left));
  const words = wordsWithin(input, most);
  const place = { x: EDGE, y: top + words.height + 6, width: innerWidth(paper) };
  const body = words.draw(top) + weekGrid(grid, { ...place, height: bottom - place.y });
  const { title, right, footer } = input;
  return framed([body], { paper, title, right, footer, pageOf: () => '' });
}

/** The words above the grid: the longer column gives way, a line of each of its passages at a time. */
function wordsWithin(input: WeekPageInput, most: number): Strip {
  const width = innerWidth(input.paper);
  const column = (width - COLUMN_GAP) / 2;
  const columnOf = (of: readonly Passage[], x: number, lines: number) =>
    stack(of.map((each) => passage(each, x, column, lines)));
  const answer = stack([
    paragraph(input.answer, { x: EDGE, width, size: 13, weight: 700, after: 2, maxLines: 3 }),
    paragraph(input.under, { x: EDGE, width, size: 10, soft: true, after: 6, maxLines: 2 }),
  ]);
  const lines = { left: MOST_LINES, right: MOST_LINES };
  for (;;) {
    const left = columnOf(input.left, EDGE, lines.left);
    const right = columnOf(input.beside, EDGE + column + COLUMN_GAP, lines.right);
    const words = stack([answer, beside(left, right)]);
    const longer = left.height >= right.height ? 'left' : 'right';
    if (words.height <= most || lines[longer] <= FEWEST_LINES) return words;
    lines[longer] -= 1;
  }
}

function passage({ title, lines }: Passage, x: number, width: number, most: number): Strip {
  const shown = lines.length > most ? [...lines.slice(0, most - 1), '…'] : lines;
  const style = { x, width, size: SIZE, hang: 8, maxLines: 5 };
  return stack([
    paragraph(title, { x, width, size: 10, weight: 700 }),
    { height: 4, draw: (y) => rule([x, y + 1], [x + width, y + 1], PALETTE.line, 0.75) },
    ...shown.map((line) => paragraph(line, style)),
    { height: 7, draw: () => '' },
  ]);
}
