import { PHONE_WIDTH } from './drawing.ts';
import type { Stretch } from './heading.ts';
import { type Colour, PALETTE } from './palette.ts';
import { COLUMNS, placeOf, rowsOf, type SquareWindow } from './square-window.ts';
import { box, HALF_CAP, num, text } from './svg.ts';

/** The cells to draw, which of them to mark, and where, in CSS px from the top of the picture, the square may begin. */
export interface NumberSquareInput {
  readonly window: SquareWindow;
  readonly start: number;
  readonly path: readonly number[];
  readonly top: number;
}

// A mark is fill, border and weight together, so never colour alone.
type CellMark = 'plain' | 'start' | 'path';

interface Cell {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

// Whole px at every place: equal digits then have equal pixels, which compress far better.
const CELL = 33;
const LEFT = (PHONE_WIDTH - COLUMNS * CELL) / 2;
/** More rows than this are drawn lower, so that 1 to 200 still fits a phone. */
const TALL_ROWS = 12;
const LOW_HEIGHT = 27;

const LOOK: Readonly<
  Record<Exclude<CellMark, 'plain'>, { fill: Colour; border: Colour; ink: Colour }>
> = {
  start: { fill: PALETTE.ink, border: PALETTE.ink, ink: PALETTE.paper },
  path: { fill: PALETTE.tint, border: PALETTE.accent, ink: PALETTE.ink },
};

/** A number square, ten cells to a row, with its start dark and its path framed. */
export function numberSquare({ window, start, path, top }: NumberSquareInput): Stretch {
  const rows = rowsOf(window) + (window.nought ? 1 : 0);
  const height = rows > TALL_ROWS ? LOW_HEIGHT : CELL;
  const firstRow = top + (window.nought ? height : 0);
  const marked = new Set(path);
  let grid = '';
  let plain = '';
  let ahead = '';
  const from = window.nought ? 0 : window.first;
  for (let number = from; number <= window.last; number += window.unit) {
    const { column, row } = placeOf(number, window);
    const cell = { x: LEFT + column * CELL, y: firstRow + row * height, width: CELL, height };
    grid += outline(cell);
    if (number === start) ahead += numberCell(cell, number, 'start');
    else if (marked.has(number)) ahead += numberCell(cell, number, 'path');
    else plain += numeral(cell, number, 'plain');
  }
  // One path for all plain cells is far lighter than a box each; marked ones lie over their neighbours' borders.
  const cells = `<path d="${grid}" fill="${PALETTE.card}" stroke="${PALETTE.line}"/>`;
  return { svg: cells + plain + ahead, bottom: top + rows * height };
}

function outline({ x, y, width, height }: Cell): string {
  return `M${num(x)} ${num(y)}h${num(width)}v${num(height)}h${num(-width)}z`;
}

/** One marked cell of a number square. */
export function numberCell(cell: Cell, number: number, mark: 'start' | 'path'): string {
  const { fill, border } = LOOK[mark];
  const inner = {
    x: cell.x + 0.75,
    y: cell.y + 0.75,
    width: cell.width - 1.5,
    height: cell.height - 1.5,
  };
  return box({ ...inner, r: 4 }, { fill, border, borderWidth: 2 }) + numeral(cell, number, mark);
}

function numeral(cell: Cell, number: number, mark: CellMark): string {
  const size = number > 999 ? 12 : number > 99 ? 14 : 17;
  return text(
    {
      x: cell.x + cell.width / 2,
      y: Math.round(2 * (cell.y + cell.height / 2 + size * HALF_CAP)) / 2,
      size,
      weight: mark === 'plain' ? 400 : 700,
      fill: mark === 'plain' ? PALETTE.softInk : LOOK[mark].ink,
      anchor: 'middle',
    },
    String(number),
  );
}
