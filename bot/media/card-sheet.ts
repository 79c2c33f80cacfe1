import type { CardFace } from '../../drills/facts/card-face.ts';
import { clockFace } from './clock-face.ts';
import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { type FittedLines, fitTogether } from './fit-together.ts';
import { sheetHeading } from './heading.ts';
import { PALETTE } from './palette.ts';
import { box, HALF_CAP, text } from './svg.ts';

/** The cards of one part, in the order of the helper's buttons. */
export interface CardSheetInput {
  readonly title: string;
  readonly faces: readonly CardFace[];
}

interface Cell {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const GAP = 10;
const TEXT_HEIGHT = 82;
/** Room at the top of a card for its number. */
const NUMBER_ROOM = 18;
const PADDING = 14;

/**
 * All cards of one part on one picture a phone's width wide: each card with its number, never an answer.
 * Written cards stand in two columns (one for three cards or fewer), clocks in two, or three when there are more than six.
 *
 * @throws {RangeError} when there is no card.
 * @example
 * cardSheet({ title: 'Doubles', faces: [{ kind: 'text', text: 'double 7' }] }).width; // => 360
 */
export function cardSheet({ title, faces }: CardSheetInput): Drawing {
  if (faces.length === 0) throw new RangeError('A card sheet needs at least one card.');
  const heading = sheetHeading(title);
  const columns = columnsFor(faces);
  const width = (PHONE_WIDTH - 2 * MARGIN - (columns - 1) * GAP) / columns;
  const written = fitTogether(
    faces.flatMap((face) => (face.kind === 'text' ? [face.text] : [])),
    { maxWidth: width - 2 * PADDING, size: columns === 1 ? 44 : 32, oneLineFrom: 22, minSize: 17 },
  );
  let body = heading.svg;
  let y = heading.bottom;
  let textsSoFar = 0;
  for (let first = 0; first < faces.length; first += columns) {
    const row = faces.slice(first, first + columns);
    const height = row.some(({ kind }) => kind === 'clock') ? width : TEXT_HEIGHT;
    for (const [i, face] of row.entries()) {
      const cell = { x: MARGIN + i * (width + GAP), y, width, height };
      body +=
        face.kind === 'clock'
          ? clockCard(cell, face)
          : textCard(cell, written.lines[textsSoFar++] ?? [], written.size);
      body += cardNumber(cell, first + i + 1, face.kind);
    }
    y += height + GAP;
  }
  return drawingOf(PHONE_WIDTH, y - GAP + MARGIN, body);
}

function columnsFor(faces: readonly CardFace[]): number {
  const clocks = faces.filter(({ kind }) => kind === 'clock').length;
  if (clocks === 0) return faces.length <= 3 ? 1 : 2;
  return clocks === faces.length && clocks > 6 ? 3 : 2;
}

function textCard(cell: Cell, lines: FittedLines['lines'][number], size: number): string {
  const leading = size * 1.12;
  const middle = cell.y + (cell.height + NUMBER_ROOM * 0.7) / 2;
  const first = middle + size * HALF_CAP - ((lines.length - 1) * leading) / 2;
  return (
    box({ ...cell, r: 10 }, { fill: PALETTE.card, border: PALETTE.line, borderWidth: 1.5 }) +
    lines
      .map((line, i) =>
        text(
          {
            x: cell.x + cell.width / 2,
            y: first + i * leading,
            size,
            weight: 700,
            anchor: 'middle',
          },
          line,
        ),
      )
      .join('')
  );
}

function clockCard(cell: Cell, face: Extract<CardFace, { kind: 'clock' }>): string {
  const radius = Math.min(cell.width, cell.height) / 2 - 2;
  return clockFace({
    hour: face.hour,
    minute: face.minute,
    cx: cell.x + cell.width / 2,
    cy: cell.y + cell.height / 2 + 2,
    radius,
  });
}

function cardNumber(cell: Cell, position: number, kind: CardFace['kind']): string {
  const inset = kind === 'clock' ? { x: 0, y: 12 } : { x: PADDING, y: 20 };
  return text(
    { x: cell.x + inset.x, y: cell.y + inset.y, size: 15, weight: 700, fill: PALETTE.accent },
    String(position),
  );
}
