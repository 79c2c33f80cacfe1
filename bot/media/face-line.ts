import { measure } from './font.ts';
import { PALETTE } from './palette.ts';
import { box, HALF_CAP, text } from './svg.ts';

/** A question mark standing alone is the place of the missing number; one at a word's end is punctuation. */
const GAP = /(?<!\S)\?(?!\S)/;
/** From line to line of one card, in em; more where answer boxes would touch. */
export const FACE_LEADING = 1.15;
const BOX_LEADING = 1.35;
const GAP_WIDTH = 0.92;
const GAP_HEIGHT = 1.06;

/** Where a block of lines stands, in CSS px: `y` is its middle, `x` the middle or, when `align` is `start`, the left edge. */
export interface FaceBlock {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly align?: 'middle' | 'start';
}

/**
 * Width in CSS px of a card's line in bold, each gap counted as wide as the answer box drawn for it.
 *
 * @example
 * faceWidth('7 + ?', 20) > measure('7 + ', 20, 700); // => true
 */
export function faceWidth(line: string, size: number): number {
  const pieces = line.split(GAP);
  const written = pieces.reduce((sum, piece) => sum + measure(piece, size, 700), 0);
  return written + (pieces.length - 1) * GAP_WIDTH * size;
}

/**
 * The lines of one card, bold, with an empty answer box wherever a number is asked for.
 *
 * @example
 * faceLines({ x: 100, y: 50, size: 30 }, ['? + 7 = 10']); // contains '<rect'
 */
export function faceLines({ x, y, size, align }: FaceBlock, lines: readonly string[]): string {
  const leading = size * (lines.some((line) => GAP.test(line)) ? BOX_LEADING : FACE_LEADING);
  const first = y - ((lines.length - 1) * leading) / 2;
  return lines
    .map((line, i) => {
      const left = align === 'start' ? x : x - faceWidth(line, size) / 2;
      return faceLine({ x: left, y: first + i * leading, size }, line);
    })
    .join('');
}

function faceLine({ x, y, size }: FaceBlock, line: string): string {
  const baseline = y + size * HALF_CAP;
  const style = { y: baseline, size, weight: 700 } as const;
  const pieces = line.split(GAP);
  let at = x;
  let svg = '';
  for (const [i, piece] of pieces.entries()) {
    if (i > 0) {
      svg += answerBox(at, y, size);
      at += GAP_WIDTH * size;
    }
    const indent = measure(' ', size, 700) * (piece.length - piece.trimStart().length);
    svg += text({ ...style, x: at + indent }, piece);
    at += measure(piece, size, 700);
  }
  return svg;
}

function answerBox(x: number, middle: number, size: number): string {
  const height = GAP_HEIGHT * size;
  return box(
    { x, y: middle - height / 2, width: GAP_WIDTH * size, height, r: size * 0.14 },
    { fill: PALETTE.card, border: PALETTE.accent, borderWidth: Math.max(1.5, size * 0.055) },
  );
}
