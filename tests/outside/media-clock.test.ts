import { describe, expect, it } from 'vitest';
import { cardFrame } from '../../bot/media/index.ts';
import { rasterise } from '../../bot/media/painter.ts';
import { halfWidth, measureHands } from '../bot/media/clock-hands.ts';
import { apart, isDark, ringPixels } from '../bot/media/clock-pixels.ts';
import { circles } from '../bot/media/text-boxes.ts';

/**
 * Source: the usual formula of clock arithmetic, public knowledge: hour hand 30 (h mod 12) + m / 2 degrees clockwise
 * from 12, minute hand 6 m. These values are written out by hand, so neither our formula nor our drawing is trusted.
 */
const WORKED = [
  [3, 0, 90, 0],
  [3, 15, 97.5, 90],
  [3, 30, 105, 180],
  [3, 45, 112.5, 270],
  [12, 0, 0, 0],
  [10, 30, 315, 180],
  [6, 30, 195, 180],
  [12, 50, 25, 300],
  [9, 55, 297.5, 330],
  [11, 55, 357.5, 330],
  [1, 5, 32.5, 30],
  [2, 10, 65, 60],
] as const;

const WIDTH = 320;

function pictureOf(hour: number, minute: number) {
  const drawing = cardFrame({ face: { kind: 'clock', hour, minute }, position: 1, of: 15 });
  const [rim] = circles(drawing);
  if (rim === undefined) throw new Error('There is no clock on the card.');
  const scale = WIDTH / drawing.width;
  const place = { cx: rim.cx * scale, cy: rim.cy * scale, radius: rim.r * scale };
  return { raster: rasterise(drawing, WIDTH), place };
}

const six = pictureOf(6, 0);
const half = halfWidth(six.raster, six.place);

function handsAt(hour: number, minute: number) {
  const { raster, place } = pictureOf(hour, minute);
  return measureHands(raster, place, half);
}

const TIMES = Array.from(
  { length: 144 },
  (_, i) => [Math.floor(i / 12) + 1, (i % 12) * 5] as const,
);
/** Hour hands of neighbouring five-minute times are 2.5 degrees apart, so this leaves one reading only. */
const TOLERANCE = 0.5;

describe('a clock card at 320 pixels, colours left out', () => {
  it.each(WORKED)('shows %i:%i by the worked angles', (hour, minute, hourAngle, minuteAngle) => {
    const { long, short } = handsAt(hour, minute);
    expect(apart(long, minuteAngle)).toBeLessThan(TOLERANCE);
    expect(apart(short, hourAngle)).toBeLessThan(TOLERANCE);
  });

  it.each(TIMES)('shows %i:%i by the formula', (hour, minute) => {
    const { long, short } = handsAt(hour, minute);
    expect(apart(long, 6 * minute)).toBeLessThan(TOLERANCE);
    expect(apart(short, 30 * (hour % 12) + minute / 2)).toBeLessThan(TOLERANCE);
  });

  it.each(TIMES)('shows enough of both hands at %i:%i', (hour, minute) => {
    const { raster, place } = pictureOf(hour, minute);
    const dark = (inner: number, outer: number) =>
      ringPixels(raster, place, inner, outer).filter(isDark).length;
    // Common practice, no source: a hand is seen when at least half of its shaft is.
    const both = ringPixels(six.raster, six.place, 0.2, 0.31).filter(isDark).length;
    expect(dark(0.2, 0.31)).toBeGreaterThan(both / 2);
    expect(dark(0.47, 0.55)).toBeGreaterThan(30);
  });
});
