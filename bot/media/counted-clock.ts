import { handAngles } from '../../drills/facts/hand-angles.ts';
import { type ClockFaceInput, clockFace } from './clock-face.ts';
import { PALETTE } from './palette.ts';
import { HALF_CAP, num, text } from './svg.ts';

/** How far, in radii of the face, the counted minutes reach beyond its centre. */
export const COUNTED_REACH = 1.34;

const ARC_AT = 1.06;
const ARC_WIDTH = 0.045;
const COUNTS_AT = 1.23;
const COUNT_SIZE = 0.17;
/** In CSS px: nothing smaller can be read on a phone. */
const LEAST_SIZE = 11;

/**
 * A clock face with its minutes counted outside the rim: by fives from the top as far as the long hand, with an arc that leads
 * there. At a full hour there is nothing to count.
 *
 * @example
 * countedClock({ hour: 3, minute: 15, cx: 90, cy: 90, radius: 60 }); // contains '>15</text>'
 */
export function countedClock(input: ClockFaceInput): string {
  const { minute } = input;
  const counted = Array.from({ length: Math.floor(minute / 5) }, (_, i) => (i + 1) * 5);
  const size = Math.max(LEAST_SIZE, input.radius * COUNT_SIZE);
  const counts = counted.map((count) => {
    const { x, y } = at(input, handAngles(12, count).minute, COUNTS_AT);
    const style = { x, y: y + size * HALF_CAP, size, weight: 700, anchor: 'middle' } as const;
    return text({ ...style, fill: PALETTE.accent }, String(count));
  });
  return clockFace(input) + arc(input) + counts.join('');
}

function at({ cx, cy, radius }: ClockFaceInput, degrees: number, out: number) {
  const turn = (degrees * Math.PI) / 180;
  return { x: cx + radius * out * Math.sin(turn), y: cy - radius * out * Math.cos(turn) };
}

/** From the top clockwise to the long hand, with a dot where it ends. */
function arc(input: ClockFaceInput): string {
  const { minute, radius } = input;
  if (minute === 0) return '';
  const degrees = handAngles(12, minute).minute;
  const [from, to] = [at(input, 0, ARC_AT), at(input, degrees, ARC_AT)];
  const r = num(radius * ARC_AT);
  const path = `M${num(from.x)} ${num(from.y)}A${r} ${r} 0 ${degrees > 180 ? 1 : 0} 1 ${num(to.x)} ${num(to.y)}`;
  return (
    `<path d="${path}" fill="none" stroke="${PALETTE.accent}" stroke-width="${num(radius * ARC_WIDTH)}"/>` +
    `<circle cx="${num(to.x)}" cy="${num(to.y)}" r="${num(radius * 0.045)}" fill="${PALETTE.accent}"/>`
  );
}
