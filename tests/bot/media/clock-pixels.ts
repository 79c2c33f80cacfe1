import type { Raster } from '../../../bot/media/painter.ts';

/** Where a clock stands in a raster: centre and radius in pixels. */
export interface ClockPlace {
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
}

/** A pixel of a clock, greyscale only: how dark it is (0 paper, 1 ink), and where it lies, in radii right of and above the centre. */
export interface ClockPixel {
  readonly darkness: number;
  readonly right: number;
  readonly up: number;
  readonly degrees: number;
}

/** Pixels between two circles around a clock's centre, radii given as shares of the clock's. */
export function ringPixels(
  { pixels, width, height }: Raster,
  { cx, cy, radius }: ClockPlace,
  inner: number,
  outer: number,
): ClockPixel[] {
  const found: ClockPixel[] = [];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [right, up] = [(x + 0.5 - cx) / radius, (cy - y - 0.5) / radius];
      const share = Math.hypot(right, up);
      if (share < inner || share > outer) continue;
      const [red = 0, green = 0, blue = 0] = pixels.subarray(4 * (y * width + x));
      const grey = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
      found.push({ darkness: 1 - grey / 255, right, up, degrees: degreesOf(right, up) });
    }
  }
  return found;
}

/** Whether a pixel is darker than middle grey. */
export function isDark({ darkness }: ClockPixel): boolean {
  return darkness > 0.45;
}

/** The mean direction of pixels, in degrees clockwise from 12; NaN when there are none. */
export function meanDirection(pixels: readonly ClockPixel[]): number {
  if (pixels.length === 0) return Number.NaN;
  const turns = pixels.map(({ degrees }) => (degrees * Math.PI) / 180);
  const sine = turns.reduce((sum, turn) => sum + Math.sin(turn), 0);
  const cosine = turns.reduce((sum, turn) => sum + Math.cos(turn), 0);
  return degreesOf(sine, cosine);
}

/** How far two directions are apart, 0 to 180 degrees. */
export function apart(a: number, b: number): number {
  return Math.abs(turn(a, b));
}

/** The turn from one direction to another, -180 to 180 degrees, clockwise positive. */
export function turn(from: number, to: number): number {
  return ((to - from + 540) % 360) - 180;
}

function degreesOf(right: number, up: number): number {
  return ((Math.atan2(right, up) * 180) / Math.PI + 360) % 360;
}
