import type { CardFace } from '../../drills/index.ts';
import { clockFace } from '../media/clock-face.ts';
import { faceLines, faceWidth } from '../media/face-line.ts';
import { fitFace } from '../media/fit-face.ts';
import { fitText } from '../media/fit-text.ts';
import { PALETTE } from '../media/palette.ts';
import { text } from '../media/svg.ts';
import { type Cell, cellAt, cutMarks, type Grid } from './card-grid.ts';
import { type Page, pageOf } from './page.ts';
import type { PaperSize } from './paper-size.ts';

/** A card to cut out: what the child sees, what is on its back, and the part of the plan it belongs to. */
export interface PaperCard {
  readonly face: CardFace;
  readonly answer: string;
  readonly part: string;
}

/** Cards and how they are printed. Eight on a page are the size of a playing card turned sideways, ten a little lower. */
export interface CardsInput {
  readonly cards: readonly PaperCard[];
  readonly paper: PaperSize;
  readonly perPage?: 8 | 10;
}

const COLUMNS = 2;
const PADDING = 14;
/** Room at the foot of a card for the name of its part, in points. */
const FOOT = 24;
/** Numbers in one line of a counting run. */
const RUN_LINE = 5;
const LIMITS = { size: 46, phraseFrom: 30, wordFrom: 22, minSize: 9 };

/**
 * Pages in pairs: fronts, then the answers so placed that each lies behind its card when the leaf is turned over its long edge.
 * Front and back carry the card's number, counted from 1 through all pages, and its part.
 *
 * @throws {RangeError} when there is no card.
 * @example
 * cardPages({ cards, paper: 'a4' }).length; // => 4 for nine cards
 */
export function cardPages({ cards, paper, perPage = 8 }: CardsInput): Page[] {
  if (cards.length === 0) throw new RangeError('Cards to cut out need at least one card.');
  const grid: Grid = { paper, columns: COLUMNS, rows: perPage / COLUMNS };
  const pages: Page[] = [];
  for (let first = 0; first < cards.length; first += perPage) {
    const some = cards.slice(first, first + perPage);
    const side = (of: 'front' | 'back') =>
      some.map((card, i) => cardSide(card, first + i + 1, cellAt(grid, i, of), of)).join('');
    pages.push(pageOf(paper, cutMarks(grid) + side('front')), pageOf(paper, side('back')));
  }
  return pages;
}

function cardSide(card: PaperCard, number: number, cell: Cell, side: 'front' | 'back'): string {
  const left = cell.x + PADDING;
  const part = fitText(card.part, {
    maxWidth: cell.width - 2 * PADDING,
    size: 9,
    minSize: 8,
    weight: 400,
  });
  const foot = { x: left, y: cell.y + cell.height - 11, fill: PALETTE.softInk } as const;
  const shown = side === 'front' ? card.face : ({ kind: 'text', text: card.answer } as const);
  return [
    text({ x: left, y: cell.y + 21, size: 12, weight: 700 }, String(number)),
    shown.kind === 'clock' ? clockIn(cell, shown) : wordsIn(cell, shown.text),
    text({ ...foot, size: part.size }, part.text),
  ].join('');
}

function wordsIn(cell: Cell, content: string): string {
  const maxWidth = cell.width - 2 * PADDING;
  const maxHeight = cell.height - 2 * FOOT;
  const numbers = content.split(', ');
  const { lines, size } =
    numbers.length > RUN_LINE
      ? runLines(numbers, maxWidth)
      : fitFace(content, { ...LIMITS, maxWidth, maxHeight });
  return faceLines({ x: cell.x + cell.width / 2, y: cell.y + cell.height / 2, size }, lines);
}

/** A counting run in lines of five, so that the place is found again. */
function runLines(numbers: readonly string[], maxWidth: number) {
  const lines: string[] = [];
  for (let first = 0; first < numbers.length; first += RUN_LINE) {
    lines.push(numbers.slice(first, first + RUN_LINE).join(', '));
  }
  const widest = Math.max(...lines.map((line) => faceWidth(line, 1)));
  return { lines, size: Math.min(26, maxWidth / widest) };
}

function clockIn(cell: Cell, { hour, minute }: Extract<CardFace, { kind: 'clock' }>): string {
  const radius = Math.min(cell.width / 2 - 40, (cell.height - 8 - FOOT) / 2);
  return clockFace({
    hour,
    minute,
    cx: cell.x + cell.width / 2,
    cy: cell.y + 8 + radius,
    radius,
  });
}
