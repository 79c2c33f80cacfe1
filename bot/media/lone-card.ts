import type { CardFace } from '../../drills/facts/card-face.ts';
import { clockFace } from './clock-face.ts';
import { type Drawing, drawingOf } from './drawing.ts';
import { faceLines } from './face-line.ts';
import { fitFace } from './fit-face.ts';

/** In CSS px. A written card is half as high as it is wide, so that its buttons stay in sight. */
const SIDE = 360;
const TEXT_HEIGHT = 180;
const PAD = 20;
const CLOCK_MARGIN = 12;
const LIMITS = {
  maxWidth: SIDE - 2 * PAD,
  maxHeight: TEXT_HEIGHT - 2 * PAD,
  size: 96,
  phraseFrom: 52,
  wordFrom: 36,
  minSize: 26,
};

/**
 * One card as large as a phone shows it and nothing beside it, so that the same card is the same picture wherever it stands.
 *
 * @example
 * loneCard({ kind: 'clock', hour: 3, minute: 30 }).height; // => 360
 * loneCard({ kind: 'text', text: '3 + 4' }).height; // => 180
 */
export function loneCard(face: CardFace): Drawing {
  if (face.kind === 'clock') {
    const middle = SIDE / 2;
    const { hour, minute } = face;
    const radius = middle - CLOCK_MARGIN;
    return drawingOf(SIDE, SIDE, clockFace({ hour, minute, cx: middle, cy: middle, radius }));
  }
  const { lines, size } = fitFace(face.text, LIMITS);
  return drawingOf(SIDE, TEXT_HEIGHT, faceLines({ x: SIDE / 2, y: TEXT_HEIGHT / 2, size }, lines));
}
