import type { CardFace } from '../../drills/index.ts';
import { clockFace } from '../media/clock-face.ts';
import { num } from '../media/svg.ts';

/** Where a clock stands, in points: `x` is its left edge, `middle` the height of its centre. */
export interface ClockPlace {
  readonly x: number;
  readonly middle: number;
  readonly radius: number;
}

/** A clock is drawn at this radius and then made smaller: the screen's templates leave the numerals out of a small one. */
const DRAWN = 40;

/**
 * A clock smaller than a screen shows well, with all its numerals: paper is finer.
 *
 * @example
 * smallClock({ kind: 'clock', hour: 3, minute: 30 }, { x: 0, middle: 20, radius: 20 }); // starts with '<g'
 */
export function smallClock(
  { hour, minute }: Extract<CardFace, { kind: 'clock' }>,
  { x, middle, radius }: ClockPlace,
): string {
  const clock = clockFace({ hour, minute, cx: DRAWN, cy: DRAWN, radius: DRAWN });
  const moved = `translate(${num(x)} ${num(middle - radius)})`;
  return `<g transform="${moved} scale(${(radius / DRAWN).toFixed(4)})">${clock}</g>`;
}
