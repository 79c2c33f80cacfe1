import { type MapCell, mapCell } from './class-map-cell.ts';
import { classMapLegend } from './class-map-legend.ts';
import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { fitText } from './fit-text.ts';
import { drawable, measure } from './font.ts';
import { type Stretch, sheetHeading } from './heading.ts';
import { PALETTE } from './palette.ts';
import { sheetFooter } from './sheet-footer.ts';
import { HALF_CAP, rule, text } from './svg.ts';
import { type PictureWords, pictureWords } from './words.ts';

/** One child's cells, in the order of the strands; `null` for a strand not asked. */
export interface MapRow {
  readonly number: number;
  readonly name: string;
  readonly cells: readonly (MapCell | null)[];
}

/** A class over some weeks: 1 to 60 children, 1 to 8 strands. */
export interface ClassMapInput {
  readonly title: string;
  readonly strandLabels: readonly string[];
  readonly rows: readonly MapRow[];
  readonly footer: string;
  readonly words?: PictureWords;
}

interface Columns {
  readonly numberEnd: number;
  readonly name: number;
  readonly nameWidth: number;
  readonly firstCell: number;
  readonly cellWidth: number;
}

const ROW = 26;
const TEXT = 15;
const LABEL = 14;
const NAME_MOST = 96;
const CELL_LEAST = 25;
const CELL_MOST = 48;
const LABEL_MOST = 120;

/**
 * Children down, strands across, for a phone held upright: each cell says its figure and, by its ground, how sure one can be.
 * Names that do not fit are cut; a name the font cannot draw leaves the roster number to stand for the child.
 *
 * @throws {RangeError} when rows or strands are too few or too many, when a row has another number of cells, or for a score that
 * cannot be.
 * @example
 * classMap({ title: 'Kingfisher', strandLabels: ['halves'], footer: '',
 *   rows: [{ number: 1, name: 'Wren', cells: [{ right: 9, asked: 10, standing: 'secure' }] }] }).width; // => 360
 */
export function classMap(input: ClassMapInput): Drawing {
  checkCounts(input);
  const columns = columnsFor(input);
  const heading = sheetHeading(input.title);
  const labels = strandLabels(input.strandLabels, columns, heading.bottom);
  let body = heading.svg + labels.svg;
  let y = labels.bottom;
  for (const row of input.rows) {
    body += rule([MARGIN, y], [PHONE_WIDTH - MARGIN, y], PALETTE.line) + mapRow(row, columns, y);
    y += ROW;
  }
  body += rule([MARGIN, y], [PHONE_WIDTH - MARGIN, y], PALETTE.softInk, 1.5);
  const legend = classMapLegend(input.words ?? pictureWords(), y + 12);
  const footer = sheetFooter(input.footer, legend.bottom);
  return drawingOf(PHONE_WIDTH, footer.bottom + MARGIN, body + legend.svg + footer.svg);
}

function checkCounts({ rows, strandLabels }: ClassMapInput): void {
  if (rows.length < 1 || rows.length > 60) {
    throw new RangeError(`Got ${rows.length} rows in a class map: from 1 to 60 can be drawn.`);
  }
  if (strandLabels.length < 1 || strandLabels.length > 8) {
    throw new RangeError(
      `Got ${strandLabels.length} strands in a class map: from 1 to 8 can be drawn.`,
    );
  }
  for (const { number, cells } of rows) {
    if (cells.length !== strandLabels.length) {
      throw new RangeError(
        `Got ${cells.length} cells for child ${number} under ${strandLabels.length} strands: give one for each.`,
      );
    }
  }
}

function columnsFor({ rows, strandLabels }: ClassMapInput): Columns {
  const longest = (texts: readonly string[]) =>
    Math.max(...texts.map((each) => measure(each, TEXT, 400)));
  const numberEnd = MARGIN + Math.ceil(longest(rows.map(({ number }) => String(number))));
  const name = numberEnd + 7;
  const wanted = longest(rows.map((row) => drawable(row.name, '')));
  const space = PHONE_WIDTH - MARGIN - name;
  const left = space - Math.min(wanted, NAME_MOST) - 6;
  // Whole px: equal figures then have equal pixels, which compress better.
  const asked = Math.floor(left / strandLabels.length);
  const cellWidth = Math.max(CELL_LEAST, Math.min(CELL_MOST, asked));
  const firstCell = PHONE_WIDTH - MARGIN - strandLabels.length * cellWidth;
  return { numberEnd, name, nameWidth: firstCell - name - 6, firstCell, cellWidth };
}

/** The strands' names, read upwards, each over the middle of its column. */
function strandLabels(labels: readonly string[], columns: Columns, top: number): Stretch {
  const fitted = labels.map((label) =>
    fitText(label, { maxWidth: LABEL_MOST, size: LABEL, minSize: 12, weight: 700 }),
  );
  const height = Math.max(...fitted.map((label) => measure(label.text, label.size, 700)));
  const bottom = Math.ceil(top + height + 8);
  const svg = fitted.map((label, i) => {
    const middle = columns.firstCell + (i + 0.5) * columns.cellWidth;
    const x = middle + label.size * HALF_CAP;
    return text({ x, y: bottom - 6, size: label.size, weight: 700, turned: true }, label.text);
  });
  return { svg: svg.join(''), bottom };
}

function mapRow(row: MapRow, columns: Columns, top: number): string {
  const y = Math.round(2 * (top + ROW / 2 + TEXT * HALF_CAP)) / 2;
  const name = fitText(drawable(row.name, ''), {
    maxWidth: columns.nameWidth,
    size: TEXT,
    minSize: 13,
    weight: 400,
  });
  const number = { x: columns.numberEnd, y, size: TEXT, fill: PALETTE.softInk } as const;
  return [
    text({ ...number, anchor: 'end' }, String(row.number)),
    text({ x: columns.name, y, size: name.size }, name.text),
    ...row.cells.map((cell, i) =>
      mapCell(cell, {
        x: columns.firstCell + i * columns.cellWidth,
        y: top,
        width: columns.cellWidth,
        height: ROW,
      }),
    ),
  ].join('');
}
