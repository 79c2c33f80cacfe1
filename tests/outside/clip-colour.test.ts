import { describe, expect, it } from 'vitest';
import { toYuv420 } from '../../bot/clip/yuv.ts';

/**
 * Source: the 8-bit values of full colour bars in Recommendation ITU-R BT.709 (items 3.2 to 3.4 and 4.6), as broadcast engineers
 * list them; written from memory and worked again by hand from the item's factors.
 */
const BARS = [
  ['white', 255, 255, 255, 235, 128, 128],
  ['yellow', 255, 255, 0, 219, 16, 138],
  ['cyan', 0, 255, 255, 188, 154, 16],
  ['green', 0, 255, 0, 173, 42, 26],
  ['magenta', 255, 0, 255, 78, 214, 230],
  ['red', 255, 0, 0, 63, 102, 240],
  ['blue', 0, 0, 255, 32, 240, 118],
  ['black', 0, 0, 0, 16, 128, 128],
] as const;

describe('the colour a clip is coded in', () => {
  it.each(BARS)('is as published for %s', (_, red, green, blue, luma, cb, cr) => {
    const pixels = Uint8Array.from([0, 1, 2, 3].flatMap(() => [red, green, blue, 255]));
    const planes = toYuv420({ pixels, width: 2, height: 2 });
    expect([...planes]).toEqual([luma, luma, luma, luma, cb, cr]);
  });
});
