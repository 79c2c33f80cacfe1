import type { Raster } from '../../../bot/media/painter.ts';

/** A pixel of a clock: its colour and its direction from the centre in degrees clockwise from 12. */
export interface ClockPixel {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
  readonly degrees: number;
}

/** Pixels between two circles around a clock's centre (`centre` px from left and top), radii given as shares of `radius`. */
export function ringPixels(
  { pixels, width, height }: Raster,
  centre: number,
  radius: number,
  inner: number,
  outer: number,
): ClockPixel[] {
  const found: ClockPixel[] = [];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [dx, dy] = [x + 0.5 - centre, y + 0.5 - centre];
      const share = Math.hypot(dx, dy) / radius;
      if (share < inner || share > outer) continue;
      const [red = 0, green = 0, blue = 0] = pixels.subarray(4 * (y * width + x));
      found.push({
        red,
        green,
        blue,
        degrees: ((Math.atan2(dx, -dy) * 180) / Math.PI + 360) % 360,
      });
    }
  }
  return found;
}

/** Whether a pixel is darker than middle grey, its hue left out. */
export function isDark({ red, green, blue }: ClockPixel): boolean {
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 140;
}

/** The mean direction of pixels, in degrees clockwise from 12; NaN when there are none. */
export function meanDirection(pixels: readonly ClockPixel[]): number {
  if (pixels.length === 0) return Number.NaN;
  const turns = pixels.map(({ degrees }) => (degrees * Math.PI) / 180);
  const sine = turns.reduce((sum, turn) => sum + Math.sin(turn), 0);
  const cosine = turns.reduce((sum, turn) => sum + Math.cos(turn), 0);
  return ((Math.atan2(sine, cosine) * 180) / Math.PI + 360) % 360;
}
