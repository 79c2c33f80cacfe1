import { describe, expect, it } from 'vitest';
import { encodeIndexedPng } from '../../../bot/media/png.ts';
import { readPng, slowCrc } from './read-png.ts';

/** Pixels of as many different colours as asked, one colour after another. */
function stripes(width: number, height: number, colours: number): Uint8Array {
  return Uint8Array.from({ length: width * height * 4 }, (_, i) => {
    const colour = Math.floor(i / 4) % colours;
    return [colour * 3, 255 - colour, (colour * 7) % 256, 255][i % 4] ?? 0;
  });
}

const withoutAlpha = (pixels: Uint8Array) => pixels.filter((_, i) => i % 4 !== 3);

describe('encodeIndexedPng', () => {
  it.each([
    [1, 1],
    [2, 1],
    [3, 2],
    [4, 2],
    [5, 4],
    [16, 4],
    [17, 8],
    [64, 8],
  ])('keeps a picture of %i colours exact at %i bits a pixel', (colours, bits) => {
    const pixels = stripes(67, 5, colours);
    const decoded = readPng(encodeIndexedPng(pixels, 67, 5, 64));
    expect([decoded.width, decoded.height, decoded.bits]).toEqual([67, 5, bits]);
    expect(decoded.rgb).toEqual(Uint8Array.from(withoutAlpha(pixels)));
  });

  it('writes no more colours than allowed', () => {
    const { rgb } = readPng(encodeIndexedPng(stripes(80, 4, 60), 80, 4, 16));
    const used = new Set(Array.from({ length: 320 }, (_, i) => rgb.slice(3 * i, 3 * i + 3).join()));
    expect(used.size).toBe(16);
  });

  it('keeps common colours exact and gives up a rare one when colours run out', () => {
    const greys = [...Array(100).fill(255), 0, ...Array(99).fill(200)];
    const pixels = Uint8Array.from(greys.flatMap((grey) => [grey, grey, grey, 255]));
    const { rgb } = readPng(encodeIndexedPng(pixels, 200, 1, 2));
    expect([rgb[0], rgb[3 * 100], rgb[3 * 199]]).toEqual([255, 200, 200]);
  });

  it('refuses pixels that do not fill the picture, and palettes out of range', () => {
    expect(() => encodeIndexedPng(new Uint8Array(15), 2, 2, 16)).toThrow(RangeError);
    expect(() => encodeIndexedPng(new Uint8Array(0), 0, 0, 16)).toThrow(RangeError);
    expect(() => encodeIndexedPng(new Uint8Array(16), 2, 2, 1)).toThrow(RangeError);
    expect(() => encodeIndexedPng(new Uint8Array(16), 2, 2, 257)).toThrow(RangeError);
  });
});

describe('the checksum the tests compute', () => {
  it('has the published check value of CRC-32', () => {
    expect(slowCrc(Buffer.from('123456789')).toString(16)).toBe('cbf43926');
  });
});
