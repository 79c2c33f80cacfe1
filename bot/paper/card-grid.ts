import { PALETTE } from '../media/palette.ts';
import { num, rule } from '../media/svg.ts';
import { EDGE, innerWidth, MM, PAPERS, type PaperSize } from './paper-size.ts';

/** A rectangle of a page, in points. */
export interface Cell {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A grid that fills a page and stands in its middle, so that both sides of a leaf meet. */
export interface Grid {
  readonly paper: PaperSize;
  readonly columns: number;
  readonly rows: number;
}

const MARK = 3 * MM;

/** The cell at a place counted from 0, row by row. On the `back` of a leaf turned over its long edge, left is right. */
export function cellAt(
  { paper, columns, rows }: Grid,
  place: number,
  side: 'front' | 'back',
): Cell {
  const width = (innerWidth(paper) - 2 * MARK) / columns;
  const height = (PAPERS[paper].height - 2 * (EDGE + MARK)) / rows;
  const along = place % columns;
  const column = side === 'front' ? along : columns - 1 - along;
  const row = Math.floor(place / columns);
  return { x: EDGE + MARK + column * width, y: EDGE + MARK + row * height, width, height };
}

/** Where to cut: a mark at both ends of every cut, and a fine broken line between. */
export function cutMarks(grid: Grid): string {
  const { columns, rows, paper } = grid;
  const first = cellAt(grid, 0, 'front');
  const [left, top] = [first.x, first.y];
  const [right, bottom] = [left + columns * first.width, top + rows * first.height];
  const end = PAPERS[paper];
  let svg = '';
  for (let i = 0; i <= columns; i += 1) {
    const x = left + i * first.width;
    svg += rule([x, EDGE], [x, top - 2], PALETTE.ink, 0.75);
    svg += rule([x, bottom + 2], [x, end.height - EDGE], PALETTE.ink, 0.75);
    svg += broken([x, top], [x, bottom]);
  }
  for (let i = 0; i <= rows; i += 1) {
    const y = top + i * first.height;
    svg += rule([EDGE, y], [left - 2, y], PALETTE.ink, 0.75);
    svg += rule([right + 2, y], [end.width - EDGE, y], PALETTE.ink, 0.75);
    svg += broken([left, y], [right, y]);
  }
  return svg;
}

function broken(from: readonly [number, number], to: readonly [number, number]): string {
  return `<path d="M${from.map(num).join(' ')}L${to.map(num).join(' ')}" stroke="${PALETTE.line}" stroke-width="0.5" stroke-dasharray="3 4"/>`;
}
