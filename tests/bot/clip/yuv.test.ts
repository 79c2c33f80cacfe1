import fc from 'fast-check';
import { expect, it } from 'vitest';
import { neutralise } from '../../../bot/clip/neutral.ts';
import { toYuv420 } from '../../../bot/clip/yuv.ts';
import { PALETTE } from '../../../bot/media/index.ts';
import { flat } from './support/frames.ts';

const byte = fc.integer({ min: 0, max: 255 });
const pixels = (...colours: (readonly [number, number, number])[]) =>
  Uint8Array.from(colours.flatMap((each) => [...each, 255]));
const ofColour = (hex: string) => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    Number.parseInt(hex.slice(at, at + 2), 16),
  );
  const one = [red, green, blue] as const;
  return toYuv420({ pixels: pixels(one, one, one, one), width: 2, height: 2 });
};

it('white is four times 235 and twice 128', () => {
  expect([...toYuv420(flat(255, 2))]).toEqual([235, 235, 235, 235, 128, 128]);
});

it('every colour stays within the limited range', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(byte, byte, byte), { minLength: 4, maxLength: 4 }), (colours) => {
      const planes = toYuv420({ pixels: pixels(...colours), width: 2, height: 2 });
      expect(planes.length).toBe(6);
      for (const luma of planes.subarray(0, 4)) {
        expect(luma).toBeGreaterThanOrEqual(16);
        expect(luma).toBeLessThanOrEqual(235);
      }
      for (const chroma of planes.subarray(4)) {
        expect(chroma).toBeGreaterThanOrEqual(16);
        expect(chroma).toBeLessThanOrEqual(240);
      }
    }),
  );
});

it('every grey has no colour', () => {
  fc.assert(
    fc.property(byte, (grey) => {
      expect([...toYuv420(flat(grey, 2)).subarray(4)]).toEqual([128, 128]);
    }),
  );
});

it('transparency changes nothing', () => {
  const opaque = flat(90, 4);
  const clear = { ...opaque, pixels: opaque.pixels.map((value, i) => (i % 4 === 3 ? 0 : value)) };
  expect(toYuv420(clear)).toEqual(toYuv420(opaque));
});

it('luma keeps each pixel in its place and colour is shared by four', () => {
  const black = [0, 0, 0] as const;
  const white = [255, 255, 255] as const;
  const red = [255, 0, 0] as const;
  const row = [white, black, red, red];
  const planes = toYuv420({ pixels: pixels(...row, ...row), width: 4, height: 2 });
  expect([...planes]).toEqual([235, 16, 63, 63, 235, 16, 63, 63, 128, 102, 128, 240]);
});

it.each([
  ['odd sides', { pixels: new Uint8Array(36), width: 3, height: 3 }],
  ['too few bytes', { pixels: new Uint8Array(12), width: 2, height: 2 }],
])('%s are refused', (_, raster) => {
  expect(() => toYuv420(raster)).toThrow(RangeError);
});

it('nearly grey becomes grey and keeps its brightness', () => {
  expect([...neutralise(Uint8Array.of(235, 235, 235, 235, 124, 130))]).toEqual([
    235, 235, 235, 235, 128, 128,
  ]);
});

it.each(['paper', 'card', 'ink', 'softInk', 'line'] as const)(
  '%s becomes grey in a clip',
  (name) => {
    expect([...neutralise(ofColour(PALETTE[name])).subarray(4)]).toEqual([128, 128]);
  },
);

it.each(['accent', 'tint'] as const)('%s keeps its colour in a clip', (name) => {
  expect(neutralise(ofColour(PALETTE[name]))).toEqual(ofColour(PALETTE[name]));
});

it('the picture that is made grey is left as it was', () => {
  const picture = Uint8Array.of(235, 235, 235, 235, 124, 130);
  neutralise(picture);
  expect(picture[4]).toBe(124);
});
