import { describe, expect, it } from 'vitest';
import { clockFace } from '../../bot/media/clock-face.ts';
import { drawingOf } from '../../bot/media/drawing.ts';
import { rasterise } from '../../bot/media/painter.ts';
import { isDark, meanDirection, ringPixels } from '../bot/media/clock-pixels.ts';

/**
 * Source: the usual formula of clock arithmetic, public knowledge: hour hand 30 (h mod 12) + m / 2 degrees clockwise
 * from 12, minute hand 6 m. The values are written out by hand, so neither our formula nor our drawing is trusted.
 */
const ANGLES = [
  ['3:00', 3, 0, 90, 0],
  ['3:15', 3, 15, 97.5, 90],
  ['3:30', 3, 30, 105, 180],
  ['3:45', 3, 45, 112.5, 270],
  ['12:00', 12, 0, 0, 0],
  ['10:30', 10, 30, 315, 180],
  ['6:30', 6, 30, 195, 180],
  ['12:50', 12, 50, 25, 300],
  ['9:55', 9, 55, 297.5, 330],
  ['11:55', 11, 55, 357.5, 330],
  ['1:05', 1, 5, 32.5, 30],
  ['2:10', 2, 10, 65, 60],
] as const;

const apart = (a: number, b: number) => Math.abs(((a - b + 540) % 360) - 180);

describe.each(ANGLES)('the drawn clock at %s', (_, hour, minute, hourAngle, minuteAngle) => {
  const [centre, radius] = [320, 300];
  const raster = rasterise(
    drawingOf(
      320,
      320,
      clockFace({ hour, minute, cx: centre / 2, cy: centre / 2, radius: radius / 2 }),
    ),
    640,
  );

  it('points its long hand at the minutes', () => {
    const longHand = ringPixels(raster, centre, radius, 0.45, 0.54).filter(isDark);
    expect(apart(meanDirection(longHand), minuteAngle)).toBeLessThan(0.5);
  });

  it('points its short hand at the hour, moved on by the minutes', () => {
    // The short hand lies on top and is the only thing as dark as ink this near the centre.
    const shortHand = ringPixels(raster, centre, radius, 0.14, 0.4).filter(({ red }) => red < 70);
    expect(apart(meanDirection(shortHand), hourAngle)).toBeLessThan(0.5);
  });
});
