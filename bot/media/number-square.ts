import { MARGIN, PHONE_WIDTH } from './drawing.ts';
import { measure } from './font.ts';
import type { Stretch } from './heading.ts';
import { PALETTE } from './palette.ts';
import { box, HALF_CAP, num, text } from './svg.ts';

/** The path to mark and where, in CSS px from the top of the picture, the square may begin. */
export interface NumberSquareInput {
  readonly numbers: readonly number[];
  readonly limit: number;
  readonly startWord: string;
  readonly top: number;
}

const COLUMNS = 10;
const CELL = (PHONE_WIDTH - 2 * MARGIN) / COLUMNS;
/** More rows than this are drawn lower, so that 1 to 200 still fits a phone. */
const TALL_ROWS = 12;
const LOW_HEIGHT = 27;
const TAG_HEIGHT = 24;
const TAG_GAP = 7;

interface Frame {
  readonly top: number;
  readonly firstRow: number;
  readonly height: number;
}

/** The rows of the number square from the lowest number of the path to the highest; the start wears a tag outside the square. */
export function numberSquare({ numbers, limit, startWord, top }: NumberSquareInput): Stretch {
  const firstRow = rowOf(Math.min(...numbers));
  const rows = rowOf(Math.max(...numbers)) - firstRow + 1;
  const start = numbers[0] ?? 0;
  // Numbers only rise or only fall, so the start is in the first row or in the last one, next to free paper.
  const tagAbove = rowOf(start) === firstRow;
  const tagRoom = TAG_HEIGHT + TAG_GAP;
  const frame = {
    top: top + (tagAbove ? tagRoom : 0),
    firstRow,
    height: rows > TALL_ROWS ? LOW_HEIGHT : CELL,
  };
  const path = new Set(numbers);
  let plain = '';
  let marked = '';
  for (
    let number = Math.max(0, 10 * firstRow + 1);
    number <= Math.min(limit, 10 * (firstRow + rows));
    number++
  ) {
    if (path.has(number)) marked += pathCell(frame, number, number === start);
    else plain += plainCell(frame, number);
  }
  const foot = frame.top + rows * frame.height;
  const tag = startTag(frame, start, startWord, tagAbove);
  return { svg: plain + marked + tag, bottom: foot + (tagAbove ? 0 : tagRoom) };
}

/** One stands at the left of row 0, so nought, the number before it, ends row -1. */
function rowOf(number: number): number {
  return Math.floor((number - 1) / COLUMNS);
}

function cellOf({ top, firstRow, height }: Frame, number: number) {
  const column = (number - 1 + COLUMNS) % COLUMNS;
  return {
    x: MARGIN + column * CELL,
    y: top + (rowOf(number) - firstRow) * height,
    width: CELL,
    height,
  };
}

function plainCell(frame: Frame, number: number): string {
  const cell = cellOf(frame, number);
  return (
    box(inset(cell, 0.75), { fill: PALETTE.card, border: PALETTE.line }) +
    numeral(cell, number, 400, PALETTE.softInk)
  );
}

function pathCell(frame: Frame, number: number, start: boolean): string {
  const cell = cellOf(frame, number);
  const fill = start ? PALETTE.ink : PALETTE.tint;
  return (
    box(
      { ...inset(cell, 0.75), r: 4 },
      { fill, border: start ? PALETTE.ink : PALETTE.accent, borderWidth: 2 },
    ) + numeral(cell, number, 700, start ? PALETTE.paper : PALETTE.ink)
  );
}

function numeral(
  cell: ReturnType<typeof cellOf>,
  number: number,
  weight: 400 | 700,
  fill: typeof PALETTE.ink | typeof PALETTE.paper | typeof PALETTE.softInk,
): string {
  const size = number > 99 ? 14 : 17;
  const y = cell.y + cell.height / 2 + size * HALF_CAP;
  return text(
    { x: cell.x + cell.width / 2, y, size, weight, fill, anchor: 'middle' },
    String(number),
  );
}

function inset(cell: ReturnType<typeof cellOf>, by: number) {
  return {
    x: cell.x + by,
    y: cell.y + by,
    width: cell.width - 2 * by,
    height: cell.height - 2 * by,
  };
}

function startTag(frame: Frame, start: number, word: string, above: boolean): string {
  const cell = cellOf(frame, start);
  const width = measure(word, 15, 700) + 18;
  const middle = cell.x + cell.width / 2;
  const x = Math.min(Math.max(middle - width / 2, MARGIN), PHONE_WIDTH - MARGIN - width);
  const y = above ? cell.y - TAG_GAP - TAG_HEIGHT : cell.y + cell.height + TAG_GAP;
  const base = above ? y + TAG_HEIGHT - 1 : y + 1;
  const tip = above ? cell.y - 1 : cell.y + cell.height + 1;
  return (
    box({ x, y, width, height: TAG_HEIGHT, r: 6 }, { fill: PALETTE.ink }) +
    `<path d="M${num(middle - 6)} ${num(base)}L${num(middle + 6)} ${num(base)}L${num(middle)} ${num(tip)}Z" fill="${PALETTE.ink}"/>` +
    text(
      {
        x: x + width / 2,
        y: y + TAG_HEIGHT / 2 + 15 * HALF_CAP - 0.5,
        size: 15,
        weight: 700,
        fill: PALETTE.paper,
        anchor: 'middle',
      },
      word,
    )
  );
}
