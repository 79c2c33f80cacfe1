import type { Raster } from '../../../bot/media/painter.ts';
import {
  type ClockPixel,
  type ClockPlace,
  isDark,
  meanDirection,
  ringPixels,
  turn,
} from './clock-pixels.ts';

/** Directions of two hands as measured, in degrees clockwise from 12. */
export interface MeasuredHands {
  readonly long: number;
  readonly short: number;
}

/** Half the width that the long hand and the paper beside it may take, in radii: pixels nearer its axis are not the short hand's. */
const LONG_HALF = 0.06;
/** Where the short hand's sides are straight and the hub is past, in radii. */
const SHAFT = [0.16, 0.31] as const;
const HALF_DARK = 0.43;

/**
 * Reads both hands off the pixels of a clock, colours left out. The long hand is what is dark beyond the short hand's reach. Of the
 * short hand the side away from the long hand is always in sight; its axis lies `half` radii inside that side, where `half` is
 * measured by `halfWidth` at a time when nothing covers it. Nothing here knows how the hands were drawn.
 */
export function measureHands(raster: Raster, place: ClockPlace, half: number): MeasuredHands {
  const long = meanDirection(ringPixels(raster, place, 0.47, 0.55).filter(isDark));
  const rough = meanDirection(shortHand(raster, place, long));
  const side = turn(long, rough) < 0 ? -1 : 1;
  let short = rough;
  for (let pass = 0; pass < 3; pass++) {
    const slant = mean(
      edge(raster, place, short, side).map(({ along, aside }) => Math.asin((aside - half) / along)),
    );
    short += (side * slant * 180) / Math.PI;
  }
  return { long, short: (short + 360) % 360 };
}

/** Half the thickness of the short hand, in radii, measured on a picture of six o'clock: both its sides are then in sight. */
export function halfWidth(atSix: Raster, place: ClockPlace): number {
  return mean([1, -1].flatMap((side) => edge(atSix, place, 180, side).map(({ aside }) => aside)));
}

function shortHand(raster: Raster, place: ClockPlace, long: number): ClockPixel[] {
  const radians = (long * Math.PI) / 180;
  return ringPixels(raster, place, ...SHAFT).filter((pixel) => {
    const along = pixel.right * Math.sin(radians) + pixel.up * Math.cos(radians);
    const aside = pixel.right * Math.cos(radians) - pixel.up * Math.sin(radians);
    return isDark(pixel) && (along < 0 || Math.abs(aside) > LONG_HALF);
  });
}

/** Where darkness begins, in radii aside of a direction, coming from outside: one point for each small step along it. */
function edge(raster: Raster, place: ClockPlace, direction: number, side: number) {
  const radians = (direction * Math.PI) / 180;
  const [sine, cosine] = [Math.sin(radians), Math.cos(radians)];
  const points: { along: number; aside: number }[] = [];
  for (let along = SHAFT[0]; along <= SHAFT[1]; along += 0.005) {
    const at = (aside: number) =>
      darknessAt(raster, {
        x: place.cx + place.radius * (along * sine + side * aside * cosine),
        y: place.cy - place.radius * (along * cosine - side * aside * sine),
      });
    let aside = 0.16;
    while (aside > 0 && at(aside) < HALF_DARK) aside -= 0.001;
    points.push({ along, aside });
  }
  return points;
}

/** Darkness at a point between pixel centres, from the four around it. */
function darknessAt({ pixels, width }: Raster, { x, y }: { x: number; y: number }): number {
  const [column, row] = [Math.floor(x - 0.5), Math.floor(y - 0.5)];
  const [right, down] = [x - 0.5 - column, y - 0.5 - row];
  const dark = (dx: number, dy: number) => {
    const [red = 0, green = 0, blue = 0] = pixels.subarray(4 * ((row + dy) * width + column + dx));
    return 1 - (0.2126 * red + 0.7152 * green + 0.0722 * blue) / 255;
  };
  const upper = dark(0, 0) * (1 - right) + dark(1, 0) * right;
  const lower = dark(0, 1) * (1 - right) + dark(1, 1) * right;
  return upper * (1 - down) + lower * down;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, each) => sum + each, 0) / values.length;
}
