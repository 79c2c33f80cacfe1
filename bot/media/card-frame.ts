import type { CardFace } from '../../drills/facts/card-face.ts';
import { clockFace } from './clock-face.ts';
import type { Drawing } from './drawing.ts';
import { faceLines } from './face-line.ts';
import { fitFace } from './fit-face.ts';
import { FRAME, FRAME_FOOT, FRAME_MARGIN, FRAME_MIDDLE, squareFrame } from './frame.ts';
import { type PictureWords, pictureWords } from './words.ts';

/** One card by itself: card `position` of `of`, counted from 1. */
export interface CardFrameInput {
  readonly face: CardFace;
  readonly position: number;
  readonly of: number;
  readonly title?: string;
  readonly words?: PictureWords;
}

const LIMITS = {
  maxWidth: FRAME - 2 * FRAME_MARGIN,
  maxHeight: 2 * (FRAME_FOOT - FRAME_MIDDLE),
  size: 112,
  phraseFrom: 64,
  wordFrom: 44,
  minSize: 30,
};
const CLOCK_TOP = 76;

/**
 * One card on a square frame, for a clip, one at a time, or paper: the place among the cards at the top, the card, and never an
 * answer. A missing number is an empty box at its place. The type is at least 30 of 480 px: 22 on a phone 360 px wide.
 *
 * @throws {RangeError} when `position` is not a whole number from 1 to `of`.
 * @example
 * cardFrame({ face: { kind: 'text', text: '? + 7 = 10' }, position: 4, of: 15 }).svg; // contains '4 of 15'
 */
export function cardFrame(input: CardFrameInput): Drawing {
  const { face, position, of, title = '', words = pictureWords() } = input;
  if (!Number.isInteger(position) || !Number.isInteger(of) || position < 1 || position > of) {
    throw new RangeError(`Got card ${position} of ${of}: a card's place is a whole number from 1.`);
  }
  const top = { left: words.position(position, of), right: title };
  return squareFrame(top, face.kind === 'clock' ? clockBody(face) : textBody(face.text));
}

function textBody(content: string): string {
  const { lines, size } = fitFace(content, LIMITS);
  return faceLines({ x: FRAME / 2, y: FRAME_MIDDLE, size }, lines);
}

function clockBody({ hour, minute }: Extract<CardFace, { kind: 'clock' }>): string {
  const radius = (FRAME_FOOT - CLOCK_TOP) / 2;
  return clockFace({ hour, minute, cx: FRAME / 2, cy: CLOCK_TOP + radius, radius });
}
