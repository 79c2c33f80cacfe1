import { describe, expect, it } from 'vitest';
import { clockFace } from '../../../bot/media/clock-face.ts';
import { drawingOf } from '../../../bot/media/drawing.ts';
import { type Raster, rasterise } from '../../../bot/media/painter.ts';
import { apart, isDark, ringPixels } from './clock-pixels.ts';
import { textBoxes } from './text-boxes.ts';

const RADIUS = 50;
/** Where the clock stands when it is drawn at twice its size. */
const PLACE = { cx: 104, cy: 104, radius: 2 * RADIUS };
const face = (hour: number, minute: number) =>
  drawingOf(104, 104, clockFace({ hour, minute, cx: 52, cy: 52, radius: RADIUS }));

/** Thickness, in radii, of the dark stroke that crosses a ring near `degrees`, in a picture drawn at the size of a 12-clock sheet. */
function thickness(hour: number, minute: number, degrees: number): number {
  const raster = rasterise(face(hour, minute), 208);
  const [inner, outer] = [0.16, 0.24];
  const dark = ringPixels(raster, PLACE, inner, outer).filter(
    (pixel) => isDark(pixel) && apart(pixel.degrees, degrees) < 30,
  );
  return dark.length / ((outer - inner) * (2 * RADIUS) ** 2);
}

describe('clockFace', () => {
  it('begins with its rim', () => {
    expect(
      clockFace({ hour: 3, minute: 30, cx: 50, cy: 50, radius: 48 }).startsWith('<circle'),
    ).toBe(true);
  });

  it('writes the twelve numerals and nothing else', () => {
    expect(textBoxes(face(3, 30)).map(({ content }) => Number(content))).toEqual(
      Array.from({ length: 12 }, (_, i) => i + 1),
    );
  });

  it('tells the hands apart by thickness alone, in greyscale, at a small size', () => {
    expect(thickness(3, 30, 105) / thickness(3, 30, 180)).toBeGreaterThan(1.6);
  });

  it('tells the hands apart by length alone: past 0.46 of the radius only one is left', () => {
    const raster = rasterise(face(9, 0), 208);
    const beyond = ringPixels(raster, PLACE, 0.46, 0.55).filter(isDark);
    expect(beyond.length).toBeGreaterThan(20);
    expect(beyond.every(({ degrees }) => degrees < 20 || degrees > 340)).toBe(true);
  });

  it('leaves the numerals out where they would be too small to read', () => {
    expect(clockFace({ hour: 3, minute: 30, cx: 30, cy: 30, radius: 31 })).not.toContain('<text');
    expect(clockFace({ hour: 3, minute: 30, cx: 33, cy: 33, radius: 32 })).toContain('<text');
  });

  it('never lets a hand touch a numeral, at any minute', () => {
    const only = (svg: string, element: RegExp) =>
      rasterise(
        drawingOf(104, 104, [...svg.matchAll(element)].map(([each]) => each).join('')),
        208,
      );
    const dark = ({ pixels }: Raster) =>
      new Set(
        Array.from({ length: pixels.length / 4 }, (_, i) => i).filter(
          (i) => (pixels[4 * i] ?? 0) < 200,
        ),
      );
    const numerals = dark(only(face(12, 0).svg, /<text[^>]*>\d+<\/text>/g));
    expect(numerals.size).toBeGreaterThan(500);
    for (let minute = 0; minute < 60; minute++) {
      const hands = dark(only(face((minute % 12) + 1, minute).svg, /<path d="[^"]*Z" fill[^>]*>/g));
      expect(hands.size).toBeGreaterThan(500);
      expect(
        [...hands].filter((pixel) => numerals.has(pixel)),
        `minute ${minute}`,
      ).toEqual([]);
    }
  });
});
