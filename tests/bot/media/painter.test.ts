import { describe, expect, it } from 'vitest';
import { createPainter, PALETTE } from '../../../bot/media/index.ts';
import { rasterise } from '../../../bot/media/painter.ts';
import { readPng } from './read-png.ts';
import { SAMPLES } from './samples.ts';

const sample = (name: string) => {
  const drawing = SAMPLES[name];
  if (drawing === undefined) throw new Error(`There is no sample "${name}".`);
  return drawing;
};

describe('a painted picture', () => {
  it.each(['mixed cards', 'fives from 35', 'a result', 'a class of twelve'])(
    'shows the renderer\'s own pixels but for faint differences: "%s"',
    (name) => {
      const raster = rasterise(sample(name), 480);
      const png = readPng(createPainter().paint(sample(name), 480));
      expect([png.width, png.height]).toEqual([raster.width, raster.height]);
      const differences = png.rgb.map((value, i) =>
        Math.abs(value - (raster.pixels[Math.floor(i / 3) * 4 + (i % 3)] ?? 0)),
      );
      expect(differences.reduce((a, b) => Math.max(a, b), 0)).toBeLessThanOrEqual(48);
      expect(differences.reduce((sum, each) => sum + each, 0) / differences.length).toBeLessThan(
        0.5,
      );
    },
  );

  it.each(Object.keys(SAMPLES))('has the same bytes on a second run: "%s"', (name) => {
    const [first, second] = [createPainter(), createPainter()].map((each) =>
      each.paint(sample(name), 240),
    );
    expect(Buffer.from(first ?? []).equals(Buffer.from(second ?? []))).toBe(true);
    expect(first?.length).toBeGreaterThan(50);
  });

  it.each(Object.keys(SAMPLES))('is opaque to its corners: "%s"', (name) => {
    const { pixels, width, height } = rasterise(sample(name), 240);
    const paper = [250, 246, 238, 255];
    expect(PALETTE.paper).toBe('#faf6ee');
    for (const at of [0, width - 1, width * (height - 1), width * height - 1]) {
      expect([...pixels.subarray(4 * at, 4 * at + 4)]).toEqual(paper);
    }
  });

  it('stays under 100 kB at 720 pixels, so an upload is not slowed down', () => {
    for (const [name, drawing] of Object.entries(SAMPLES)) {
      expect(createPainter().paint(drawing, 720).length, name).toBeLessThan(100_000);
    }
  });

  it('is refused at a width that is no picture', () => {
    for (const width of [0, -1, 0.5, 4097, Number.NaN]) {
      expect(() => createPainter().paint(sample('a result'), width)).toThrow(RangeError);
    }
  });
});
