import { handAngles } from '../../drills/facts/hand-angles.ts';
import { PALETTE } from './palette.ts';
import { HALF_CAP, num, text } from './svg.ts';

/** An analogue face to draw: `hour` 1 to 12, `minute` 0 to 59, centre and radius in CSS px. */
export interface ClockFaceInput {
  readonly hour: number;
  readonly minute: number;
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
}

/** Half-outline of a hand along its axis: distance from the centre and half-width, both in radii. */
type HandOutline = readonly (readonly [along: number, halfWidth: number])[];

// The hands differ in length, thickness and tip, so no colour is needed. The long hand is narrow enough to lie on the short
// one with both its edges in sight, and ends short of the numerals. Neither has a tail: behind the centre it reads as a third.
const LONG_HAND: HandOutline = [
  [0, 0.026],
  [0.52, 0.024],
  [0.61, 0.004],
];
const SHORT_HAND: HandOutline = [
  [0, 0.09],
  [0.32, 0.09],
  [0.44, 0.012],
];
/** Paper left free on either side of the long hand, in radii, so that it parts from the short one beneath it. */
const HALO = 0.018;
const NUMERALS_AT = 0.75;
const NUMERAL_SIZE = 0.23;
/** Below this radius, in CSS px, sixty minute marks run together: only the twelve hour marks are drawn. */
const MINUTE_MARKS_FROM = 60;
/** Below this radius, in CSS px, numerals cannot be read: the face goes without. */
const NUMERALS_FROM = 32;

/**
 * An analogue clock as SVG shapes. The short hand moves with the minutes; the hands never cover a numeral.
 *
 * @example
 * clockFace({ hour: 3, minute: 30, cx: 50, cy: 50, radius: 48 }); // starts with '<circle'
 */
export function clockFace({ hour, minute, cx, cy, radius }: ClockFaceInput): string {
  const angles = handAngles(hour, minute);
  const place = { cx, cy, radius };
  const rim = radius * 0.035;
  return [
    `<circle cx="${num(cx)}" cy="${num(cy)}" r="${num(radius - rim / 2)}" fill="${PALETTE.card}" stroke="${PALETTE.ink}" stroke-width="${num(rim)}"/>`,
    marks(place),
    radius < NUMERALS_FROM ? '' : numerals(place),
    hand(place, angles.hour, SHORT_HAND, PALETTE.ink),
    hand(place, angles.minute, LONG_HAND, PALETTE.accent, 2 * HALO * radius),
    `<circle cx="${num(cx)}" cy="${num(cy)}" r="${num(radius * 0.1)}" fill="${PALETTE.ink}"/>`,
    `<circle cx="${num(cx)}" cy="${num(cy)}" r="${num(radius * 0.03)}" fill="${PALETTE.card}"/>`,
  ].join('');
}

type Place = Pick<ClockFaceInput, 'cx' | 'cy' | 'radius'>;

/** A point `out` radii from the centre and `aside` radii to the right of the line at `degrees` clockwise from 12. */
function point({ cx, cy, radius }: Place, degrees: number, out: number, aside = 0): string {
  const turn = (degrees * Math.PI) / 180;
  const x = cx + radius * (out * Math.sin(turn) + aside * Math.cos(turn));
  const y = cy - radius * (out * Math.cos(turn) - aside * Math.sin(turn));
  return `${num(x)} ${num(y)}`;
}

function marks(place: Place): string {
  const minutes = place.radius >= MINUTE_MARKS_FROM ? 60 : 12;
  let hourMarks = '';
  let minuteMarks = '';
  for (let i = 0; i < minutes; i++) {
    const degrees = (i * 360) / minutes;
    const long = degrees % 30 === 0;
    const mark = `M${point(place, degrees, long ? 0.915 : 0.935)}L${point(place, degrees, 0.97)}`;
    if (long) hourMarks += mark;
    else minuteMarks += mark;
  }
  const stroke = (path: string, width: number) =>
    path === ''
      ? ''
      : `<path d="${path}" stroke="${PALETTE.ink}" stroke-width="${num(place.radius * width)}"/>`;
  return stroke(minuteMarks, 0.012) + stroke(hourMarks, 0.03);
}

function numerals(place: Place): string {
  const size = place.radius * NUMERAL_SIZE;
  return Array.from({ length: 12 }, (_, i) => {
    const turn = ((i + 1) * Math.PI) / 6;
    const x = place.cx + place.radius * NUMERALS_AT * Math.sin(turn);
    const y = place.cy - place.radius * NUMERALS_AT * Math.cos(turn) + size * HALF_CAP;
    return text({ x, y, size, weight: 700, anchor: 'middle' }, String(i + 1));
  }).join('');
}

function hand(place: Place, degrees: number, outline: HandOutline, fill: string, halo = 0): string {
  const right = outline.map(([along, half]) => point(place, degrees, along, half));
  const left = outline.map(([along, half]) => point(place, degrees, along, -half)).reverse();
  const path = `M${[...right, ...left].join('L')}Z`;
  const edge =
    halo === 0
      ? ''
      : `<path d="${path}" fill="${PALETTE.card}" stroke="${PALETTE.card}" stroke-width="${num(halo)}" stroke-linejoin="round"/>`;
  return `${edge}<path d="${path}" fill="${fill}"/>`;
}
