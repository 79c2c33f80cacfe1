import type { CardFace } from '../../drills/facts/card-face.ts';
import { clockFace } from './clock-face.ts';
import { faceLines, faceWidth } from './face-line.ts';
import type { FittedFace } from './fit-face.ts';
import { fitTogether } from './fit-together.ts';
import { PALETTE } from './palette.ts';
import { box, HALF_CAP, rule, text } from './svg.ts';

/** A card and what the child should say. */
export interface AnsweredCard {
  readonly face: CardFace;
  readonly answer: string;
}

/** The width and height of a row, in CSS px, and whether its clock is drawn. */
export interface RowColumns {
  readonly width: number;
  readonly rowHeight: number;
  readonly miniClocks: boolean;
}

/** One row of an answer sheet: `x` and `y` are its upper left corner; `face` is the written card as set. */
export interface AnswerRow {
  readonly item: AnsweredCard;
  readonly number: number;
  readonly x: number;
  readonly y: number;
  readonly face: FittedFace;
  readonly columns: RowColumns;
}

/** The largest type of an answer, in CSS px. */
export const ANSWER_SIZE = 20;
/** Room for a card's number at the left of its row. */
export const NUMBER_WIDTH = 23;
/** The least space, in CSS px, between a card and its answer. */
export const BETWEEN = 8;

const PAD = 6;
const LEAST_WIDTH = 36;
const NUMBER_SIZE = 15;
const LIMITS = { size: 18, oneLineFrom: 16, minSize: 13 };
const LEADING = 1.15;

/** Width, in CSS px, of an answer on its tint at full size. */
export function answerWidth(answer: string): number {
  return Math.max(LEAST_WIDTH, faceWidth(answer, ANSWER_SIZE) + 2 * PAD);
}

/**
 * A card's number, the card, and its answer: a number on a tint at the right, so that it cannot be taken for a part of the card; a
 * clock's phrase at the right of the clock, or, with no clock drawn, where the cards begin.
 */
export function answerRow({ item, number, x, y, face, columns }: AnswerRow): string {
  const { rowHeight, width } = columns;
  const middle = y + rowHeight / 2;
  const start = { x: x + NUMBER_WIDTH, y: middle };
  const end = { x: x + width, y: middle };
  const numeral = { x, y: middle + NUMBER_SIZE * HALF_CAP, size: NUMBER_SIZE } as const;
  const room = width - NUMBER_WIDTH - BETWEEN;
  return [
    rule([x, y + rowHeight], [x + width, y + rowHeight], PALETTE.line),
    text({ ...numeral, fill: PALETTE.softInk }, String(number)),
    item.face.kind === 'text'
      ? written(face, start) + onTint(item.answer, end, room - widthOf(face))
      : columns.miniClocks
        ? smallClock(item.face, start, rowHeight) +
          answerLines(item.answer, { ...end, anchor: 'end' }, room - rowHeight)
        : answerLines(item.answer, { ...start, anchor: 'start' }, room),
  ].join('');
}

interface Point {
  readonly x: number;
  readonly y: number;
}

function widthOf({ lines, size }: FittedFace): number {
  return Math.max(0, ...lines.map((line) => faceWidth(line, size)));
}

function written({ lines, size }: FittedFace, at: Point): string {
  return faceLines({ ...at, size, align: 'start' }, lines);
}

function smallClock(
  { hour, minute }: Extract<CardFace, { kind: 'clock' }>,
  { x, y }: Point,
  rowHeight: number,
): string {
  const radius = rowHeight / 2 - 3;
  return clockFace({ hour, minute, cx: x + radius, cy: y, radius });
}

function onTint(answer: string, { x, y }: Point, room: number): string {
  const fitted = fitTogether([answer], { ...LIMITS, maxWidth: room - 2 * PAD });
  const lines = fitted.lines[0] ?? [];
  const width = Math.max(LEAST_WIDTH, widthOf({ lines, size: fitted.size }) + 2 * PAD);
  const height = 8 + Math.max(ANSWER_SIZE, lines.length * fitted.size * LEADING);
  return (
    box({ x: x - width, y: y - height / 2, width, height, r: 6 }, { fill: PALETTE.tint }) +
    faceLines({ x: x - width / 2, y, size: fitted.size }, lines)
  );
}

function answerLines(
  answer: string,
  { x, y, anchor }: Point & { readonly anchor: 'start' | 'end' },
  maxWidth: number,
): string {
  const { lines, size } = fitTogether([answer], { ...LIMITS, maxWidth });
  const drawn = lines[0] ?? [];
  const first = y + size * HALF_CAP - ((drawn.length - 1) * size * LEADING) / 2;
  const style = { x, size, weight: 400, anchor } as const;
  return drawn.map((line, i) => text({ ...style, y: first + i * size * LEADING }, line)).join('');
}
