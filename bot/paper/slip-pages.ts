import { fitText, wrapText } from '../media/fit-text.ts';
import { drawable } from '../media/font.ts';
import { PALETTE } from '../media/palette.ts';
import { rule, text } from '../media/svg.ts';
import type { PaperWords } from '../texts/paper.ts';
import { type Cell, cellAt, cutMarks, type Grid } from './card-grid.ts';
import { type Page, pageOf } from './page.ts';
import type { PaperSize } from './paper-size.ts';
import { qrSquare } from './qr-square.ts';

/** What one family needs to join: `link` opens the chat with the code, `code` is the same code to be typed, in groups. */
export interface JoinSlip {
  readonly number: number;
  readonly nickname: string;
  readonly link: string;
  readonly code: string;
}

/** Slips to cut apart. `place` is where the chat is found without the link; `until` is the last day a slip works, as it is read. */
export interface SlipsInput {
  readonly classTitle: string;
  readonly slips: readonly JoinSlip[];
  readonly place: string;
  readonly until: string;
  readonly paper: PaperSize;
  readonly words: PaperWords;
}

const COLUMNS = 2;
const ROWS = 3;
const PADDING = 12;
/** 37 mm with its white edge: a phone reads it at arm's length (common practice, no source). */
const QR = 100;
const SIZE = 9.5;
const LEADING = 12;

/**
 * Join slips, six a page. Each is for one child and says so: it opens the way to that child alone.
 *
 * @throws {RangeError} when there is no slip.
 * @example
 * slipPages({ classTitle: 'Kingfisher class', slips, place, until, paper: 'a4', words }).length; // => 4 for 24 children
 */
export function slipPages(input: SlipsInput): Page[] {
  const { slips, paper } = input;
  if (slips.length === 0) throw new RangeError('Join slips need at least one child.');
  const grid: Grid = { paper, columns: COLUMNS, rows: ROWS };
  const perPage = COLUMNS * ROWS;
  const pages: Page[] = [];
  for (let first = 0; first < slips.length; first += perPage) {
    const drawn = slips
      .slice(first, first + perPage)
      .map((slip, i) => slipIn(cellAt(grid, i, 'front'), slip, input));
    pages.push(pageOf(paper, cutMarks(grid) + drawn.join('')));
  }
  return pages;
}

function slipIn(cell: Cell, slip: JoinSlip, input: SlipsInput): string {
  const { words } = input;
  const x = cell.x + PADDING;
  const width = cell.width - 2 * PADDING;
  const top = cell.y + 40;
  const beside = { x: x + QR, width: width - QR };
  const what = paragraph(words.whatItIs, { ...beside, y: top + 6 });
  const until = paragraph(words.until, { ...beside, y: what.bottom + 4 });
  const day = paragraph(input.until, { ...beside, y: until.bottom, weight: 700 });
  const how = `${words.scan} ${words.orSend(input.place)}`;
  const scan = paragraph(how, { x, width, y: Math.max(top + QR + 5, day.bottom + 3) });
  const code = fitText(slip.code, { maxWidth: width, size: 13, minSize: 9, weight: 700 });
  const caution = paragraph(words.onlyThisFamily, { x, width, y: scan.bottom + 22, weight: 700 });
  return [
    slipHead(slip, input, { x, y: cell.y, width }),
    qrSquare(slip.link, { x: x - 10, y: top, size: QR + 6 }),
    what.svg,
    until.svg,
    day.svg,
    scan.svg,
    text({ x, y: scan.bottom + 16, size: code.size, weight: 700 }, code.text),
    caution.svg,
  ].join('');
}

function slipHead(
  { number, nickname }: JoinSlip,
  { classTitle, words }: SlipsInput,
  { x, y, width }: { readonly x: number; readonly y: number; readonly width: number },
): string {
  const who = `${number} · ${drawable(nickname, words.child(number))}`;
  const child = fitText(who, { maxWidth: width, size: 16, minSize: 10, weight: 700 });
  const title = fitText(classTitle, { maxWidth: width, size: SIZE, minSize: 8, weight: 400 });
  return (
    text({ x, y: y + 21, size: child.size, weight: 700 }, child.text) +
    text({ x, y: y + 33, size: title.size, fill: PALETTE.softInk }, title.text) +
    rule([x, y + 39], [x + width, y + 39], PALETTE.line, 0.75)
  );
}

interface Paragraph {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly weight?: 400 | 700;
}

function paragraph(content: string, { x, y, width, weight = 400 }: Paragraph) {
  const lines = wrapText(content, width, SIZE, weight);
  const svg = lines
    .map((line, i) => text({ x, y: y + (i + 1) * LEADING - 3, size: SIZE, weight }, line))
    .join('');
  return { svg, bottom: y + lines.length * LEADING };
}
