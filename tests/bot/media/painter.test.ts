import { describe, expect, it } from 'vitest';
import { createPainter, PALETTE } from '../../../bot/media/index.ts';
import { rasterise } from '../../../bot/media/painter.ts';
import { OVERLAPS } from './faces.ts';
import { readPng } from './read-png.ts';
import { SAMPLES } from './samples.ts';

const sample = (name: string) => {
  const drawing = SAMPLES[name];
  if (drawing === undefined) throw new Error(`There is no sample "${name}".`);
  return drawing;
};

/** One picture of each template. */
const TEMPLATES = [
  'mixed cards',
  'fives, for the helper',
  'a result',
  'a class of twelve',
  'frame: gap in the middle',
  'frame: clock 5:30',
  'the ready frame',
  'a mixed answer sheet',
  'a class map of thirty-six',
  'a term',
  'a trend',
];

/** The colours of pixels of so many bytes each, as `#rrggbb`. */
function coloursOf(bytes: Uint8Array, stride: number): Set<string> {
  const found = new Set<number>();
  for (let i = 0; i < bytes.length; i += stride) {
    const [red = 0, green = 0, blue = 0] = bytes.subarray(i);
    found.add((red << 16) | (green << 8) | blue);
  }
  return new Set([...found].map((each) => `#${each.toString(16).padStart(6, '0')}`));
}

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
      expect(differences.reduce((a, b) => Math.max(a, b), 0)).toBeLessThanOrEqual(64);
      expect(differences.reduce((sum, each) => sum + each, 0) / differences.length).toBeLessThan(1);
    },
  );

  it.each(TEMPLATES)('keeps every colour of the palette exact that it uses: "%s"', (name) => {
    const drawing = sample(name);
    const png = readPng(createPainter().paint(drawing, 480));
    const drawn = coloursOf(rasterise(drawing, 480).pixels, 4);
    const painted = coloursOf(png.rgb, 3);
    const flat = Object.values(PALETTE).filter((colour) => drawn.has(colour));
    expect(flat.length).toBeGreaterThan(2);
    expect(flat.filter((colour) => !painted.has(colour))).toEqual([]);
  });

  it.each(TEMPLATES)('has the same bytes on a second run: "%s"', (name) => {
    const [first, second] = [createPainter(), createPainter()].map((each) =>
      each.paint(sample(name), 240),
    );
    expect(Buffer.from(first ?? []).equals(Buffer.from(second ?? []))).toBe(true);
    expect(first?.length).toBeGreaterThan(50);
  });

  it.each(TEMPLATES)('is opaque to its corners: "%s"', (name) => {
    const { pixels, width, height } = rasterise(sample(name), 240);
    const paper = [250, 246, 238, 255];
    expect(PALETTE.paper).toBe('#faf6ee');
    for (const at of [0, width - 1, width * (height - 1), width * height - 1]) {
      expect([...pixels.subarray(4 * at, 4 * at + 4)]).toEqual(paper);
    }
  });

  it('stays under 100 kB at 720 pixels, so an upload is not slowed down', () => {
    // A frame is sent at 480 and is checked below.
    const sheets = Object.entries(SAMPLES).filter(([name]) => !name.startsWith('frame:'));
    expect(sheets.length).toBeGreaterThan(30);
    for (const [name, drawing] of sheets) {
      expect(createPainter().paint(drawing, 720).length, name).toBeLessThan(100_000);
    }
  });

  it('weighs little where a family waits for it', () => {
    const bytes = (name: string, width: number) =>
      createPainter().paint(sample(name), width).length;
    expect(bytes('answers to gaps', 720)).toBeLessThan(16_000);
    // Phrases are many letters: their sheet keeps to the limit at a frame's width.
    expect(bytes('answers to clocks', 480)).toBeLessThan(16_000);
    for (const [hour, minute] of OVERLAPS) {
      const name = `frame: clock ${hour}:${String(minute).padStart(2, '0')}`;
      expect(bytes(name, 480), name).toBeLessThan(9_000);
    }
  });

  it('is refused at a width that is no picture', () => {
    for (const width of [0, -1, 0.5, 4097, Number.NaN]) {
      expect(() => createPainter().paint(sample('a result'), width)).toThrow(RangeError);
    }
  });
});
