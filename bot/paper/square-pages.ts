import { PALETTE } from '../media/palette.ts';
import { box, HALF_CAP, text } from '../media/svg.ts';
import { type Page, pageOf } from './page.ts';
import { EDGE, innerWidth, PAPERS, type PaperSize } from './paper-size.ts';

/** Number squares to print: a page for each `first`, from 1 up. */
export interface SquaresInput {
  readonly firsts: readonly number[];
  readonly paper: PaperSize;
}

const SIDE = 10;
/** The frame's line outside the cells, in points. */
const RIM = 1;

/**
 * A hundred numbers a page, ten to a row and read as a book is, from `first` on. Tens stand in bold at the end of their row.
 *
 * @throws {RangeError} when there is no square, or for one that does not begin with a whole number from 1 to 9901.
 * @example
 * squarePages({ firsts: [1, 101], paper: 'a4' }).length; // => 2
 */
export function squarePages({ firsts, paper }: SquaresInput): Page[] {
  if (firsts.length === 0) throw new RangeError('A number square needs a number to begin with.');
  return firsts.map((first) => {
    if (!Number.isInteger(first) || first < 1 || first > 9_901) {
      throw new RangeError(`Got a square from ${first}: it begins with a whole number, 1 to 9901.`);
    }
    return pageOf(paper, square(first, paper));
  });
}

function square(first: number, paper: PaperSize): string {
  const cell = innerWidth(paper) / SIDE;
  const top = (PAPERS[paper].height - SIDE * cell) / 2;
  let svg = '';
  for (let i = 0; i < SIDE * SIDE; i += 1) {
    const x = EDGE + (i % SIDE) * cell;
    const y = top + Math.floor(i / SIDE) * cell;
    svg += numberAt(first + i, { x, y, width: cell, height: cell });
  }
  const side = SIDE * cell + 2 * RIM;
  const whole = { x: EDGE - RIM, y: top - RIM, width: side, height: side };
  return box(whole, { fill: PALETTE.card, border: PALETTE.ink, borderWidth: 2 * RIM }) + svg;
}

function numberAt(
  number: number,
  cell: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): string {
  const size = number > 999 ? 16 : number > 99 ? 20 : 24;
  const middle = { x: cell.x + cell.width / 2, y: cell.y + cell.height / 2 + size * HALF_CAP };
  const weight = number % SIDE === 0 ? 700 : 400;
  return (
    box(cell, { fill: PALETTE.card, border: PALETTE.softInk, borderWidth: 0.75 }) +
    text({ ...middle, size, weight, anchor: 'middle' }, String(number))
  );
}
