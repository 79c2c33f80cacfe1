import type { CardFace } from '../../drills/facts/card-face.ts';
import { clockFace } from './clock-face.ts';
import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { faceLines } from './face-line.ts';
import type { FittedFace } from './fit-face.ts';
import { fitFaces } from './fit-faces.ts';
import { sheetHeading } from './heading.ts';
import { PALETTE } from './palette.ts';
import { box, text } from './svg.ts';

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
/** The smallest type, in CSS px, a child should have to read; cards that would go below it get the whole width. */
const READABLE = 17;

/**
 * All cards of one part on one picture a phone's width wide: each card with its number, never an answer.
 * Written cards stand in two columns (one for three cards or fewer, or when long words would be too small), clocks in two, or
 * three when there are more than six.
 *
 * @throws {RangeError} when there is no card.
 * @example
 * cardSheet({ title: 'Doubles', faces: [{ kind: 'text', text: 'double 7' }] }).width; // => 360
 */
export function cardSheet({ title, faces }: CardSheetInput): Drawing {
  if (faces.length === 0) throw new RangeError('A card sheet needs at least one card.');
  const heading = sheetHeading(title);
  const columns = columnsFor(faces);
  const width = widthOf(columns);
  const written = setFaces(faces, columns);
  let body = heading.svg;
  let y = heading.bottom;
  let textsSoFar = 0;
  for (let first = 0; first < faces.length; first += columns) {
    const row = faces.slice(first, first + columns);
    const height = row.some(({ kind }) => kind === 'clock') ? width : TEXT_HEIGHT;
    for (const [i, face] of row.entries()) {
      const cell = { x: MARGIN + i * (width + GAP), y, width, height };
      body += face.kind === 'clock' ? clockCard(cell, face) : textCard(cell, written[textsSoFar++]);
      body += cardNumber(cell, first + i + 1, face.kind);
    }
    y += height + GAP;
  }
  return drawingOf(PHONE_WIDTH, y - GAP + MARGIN, body);
}

function columnsFor(faces: readonly CardFace[]): 1 | 2 | 3 {
  const clocks = faces.filter(({ kind }) => kind === 'clock').length;
  if (clocks > 0) return clocks === faces.length && clocks > 6 ? 3 : 2;
  if (faces.length <= 3) return 1;
  return setFaces(faces, 2).some(({ size }) => size < READABLE) ? 1 : 2;
}

function widthOf(columns: number): number {
  return Math.floor((PHONE_WIDTH - 2 * MARGIN - (columns - 1) * GAP) / columns);
}

function setFaces(faces: readonly CardFace[], columns: number): FittedFace[] {
  const texts = faces.flatMap((face) => (face.kind === 'text' ? [face.text] : []));
  return fitFaces(texts, {
    maxWidth: widthOf(columns) - 2 * PADDING,
    maxHeight: TEXT_HEIGHT - 1.5 * NUMBER_ROOM,
    size: columns === 1 ? 44 : 32,
    phraseFrom: 22,
    wordFrom: READABLE,
    minSize: 14,
  });
}

function textCard(cell: Cell, face: FittedFace | undefined): string {
  const middle = { x: cell.x + cell.width / 2, y: cell.y + (cell.height + NUMBER_ROOM * 0.7) / 2 };
  return (
    box({ ...cell, r: 10 }, { fill: PALETTE.card, border: PALETTE.line, borderWidth: 1.5 }) +
    (face === undefined ? '' : faceLines({ ...middle, size: face.size }, face.lines))
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
