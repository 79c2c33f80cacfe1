import type { Drawing } from './drawing.ts';
import { wrapText } from './fit-text.ts';
import { FRAME, FRAME_MARGIN, squareFrame } from './frame.ts';
import { PALETTE } from './palette.ts';
import { num, text } from './svg.ts';
import { type PictureWords, pictureWords } from './words.ts';

/** What the frame before the first card tells: the part, the number of cards, and the seconds each stays, if any. */
export interface ReadyFrameInput {
  readonly title: string;
  readonly cards: number;
  readonly seconds?: number | undefined;
  readonly words?: PictureWords;
}

const WIDTH = FRAME - 2 * FRAME_MARGIN;
const TITLE = 44;

/**
 * The calm frame before the first card: what is coming, how many and how fast, if at a pace. It counts nothing down.
 *
 * @throws {RangeError} when `cards` or `seconds` is not a whole number from 1.
 * @example
 * readyFrame({ title: 'Doubles', cards: 15, seconds: 3 }).svg; // contains '15 cards'
 */
export function readyFrame({
  title,
  cards,
  seconds,
  words = pictureWords(),
}: ReadyFrameInput): Drawing {
  for (const [what, count] of Object.entries({ cards, seconds: seconds ?? 1 })) {
    if (!Number.isInteger(count) || count < 1) {
      throw new RangeError(`Got ${count} ${what} in a ready frame: give a whole number from 1.`);
    }
  }
  const pace = seconds === undefined ? [] : [words.secondsEach(seconds)];
  return told(title, [words.cards(cards), ...pace, words.sayEach]);
}

/**
 * The frame after the last card, so that a paused player does not keep showing it.
 *
 * @example
 * endFrame().svg; // contains 'Now mark it together.'
 */
export function endFrame(words: PictureWords = pictureWords()): Drawing {
  return told(words.finished, [words.markTogether]);
}

/**
 * A frame that takes the cards' place once nobody wants to see them any more.
 *
 * @example
 * restFrame('Stopped for today.').svg; // contains 'Stopped for today.'
 */
export function restFrame(title: string): Drawing {
  return told(title, []);
}

/** A large title and quieter lines under it, together in the middle of the frame. */
function told(title: string, sentences: readonly string[]): Drawing {
  const large = wrapText(title, WIDTH, TITLE, 700, 3);
  const small = sentences.flatMap((each) => wrapText(each, WIDTH, 30, 400));
  const height = large.length * 54 + 34 + small.length * 42;
  let y = 236 - height / 2 + TITLE * 0.8;
  let svg = '';
  for (const line of large) {
    svg += text({ x: FRAME / 2, y, size: TITLE, weight: 700, anchor: 'middle' }, line);
    y += 54;
  }
  svg += restingDots(y - 20);
  y += 34;
  for (const line of small) {
    svg += text({ x: FRAME / 2, y, size: 30, fill: PALETTE.softInk, anchor: 'middle' }, line);
    y += 42;
  }
  return squareFrame({ left: '', right: '' }, svg);
}

/** Three still dots between title and sentences: an ornament, so nothing is lost when they go unseen. */
function restingDots(y: number): string {
  return [-1, 0, 1]
    .map(
      (step) =>
        `<circle cx="${num(FRAME / 2 + step * 22)}" cy="${num(y)}" r="5" fill="${PALETTE.accent}"/>`,
    )
    .join('');
}
