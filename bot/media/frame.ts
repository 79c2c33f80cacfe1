import type { Drawing } from './drawing.ts';
import { drawingOf } from './drawing.ts';
import { fitText } from './fit-text.ts';
import { measure } from './font.ts';
import { PALETTE } from './palette.ts';
import { rule, text } from './svg.ts';

/** The side, in CSS px, of one square frame of a clip. */
export const FRAME = 480;
/** Below this line, in CSS px, stands nothing a child needs: a player lays its controls over the lowest 12 %. */
export const FRAME_FOOT = FRAME * 0.88;
/** Space, in CSS px, at the left and right of a frame. */
export const FRAME_MARGIN = 32;
/** Where the middle of a frame's content stands, in CSS px from the top. */
export const FRAME_MIDDLE = 240;

const TOP_TEXT = 24;

/**
 * A square frame on paper: at its top what is said about the card, then the card itself.
 *
 * @example
 * squareFrame({ left: '4 of 15', right: 'Doubles' }, '').height; // => 480
 */
export function squareFrame(
  top: { readonly left: string; readonly right: string },
  body: string,
): Drawing {
  const y = 46;
  const space = FRAME - 2 * FRAME_MARGIN;
  const room = space - (top.left === '' ? 0 : measure(top.left, TOP_TEXT, 700) + 24);
  const title = fitText(top.right, { maxWidth: room, size: TOP_TEXT, minSize: 18, weight: 400 });
  const heading =
    text({ x: FRAME_MARGIN, y, size: TOP_TEXT, weight: 700, fill: PALETTE.accent }, top.left) +
    text(
      { x: FRAME - FRAME_MARGIN, y, size: title.size, fill: PALETTE.softInk, anchor: 'end' },
      title.text,
    );
  const under =
    heading === ''
      ? ''
      : rule([FRAME_MARGIN, y + 16], [FRAME - FRAME_MARGIN, y + 16], PALETTE.line, 1.5);
  return drawingOf(FRAME, FRAME, heading + under + body);
}
