import type { Raster } from '../media/painter.ts';

/** A picture as video codecs take it: all luma, then both chroma planes at half width and height, 8 bits each. */
export type Yuv420 = Uint8Array;

/**
 * Converts pixels to limited-range Y'CbCr with 4:2:0 chroma. Alpha is ignored; each chroma sample is the mean of its four pixels.
 *
 * Source: Recommendation ITU-R BT.709-6, items 3.2 to 3.4 (luma 0.2126 R + 0.7152 G + 0.0722 B, colour differences divided
 * by 1.8556 and 1.5748) and 4.6 (black at 16, white at 235, chroma 128 +- 112).
 *
 * @throws {RangeError} when width or height is odd, or the pixels do not fill them.
 * @example
 * toYuv420({ pixels: new Uint8Array(16).fill(255), width: 2, height: 2 }); // => 235, 235, 235, 235, 128, 128
 */
export function toYuv420({ pixels, width, height }: Raster): Yuv420 {
  if (width % 2 !== 0 || height % 2 !== 0 || pixels.length !== width * height * 4) {
    throw new RangeError(
      `Got ${width} x ${height} pixels in ${pixels.length} bytes: both sides are even and a pixel has 4 bytes.`,
    );
  }
  const luma = width * height;
  const planes = new Uint8Array(luma + luma / 2);
  for (let at = 0; at < luma; at += 1) {
    const red = pixels[4 * at] ?? 0;
    const green = pixels[4 * at + 1] ?? 0;
    const blue = pixels[4 * at + 2] ?? 0;
    planes[at] = Math.round(16 + LUMA_SCALE * lumaOf(red, green, blue));
  }
  writeChroma(planes, pixels, width, height);
  return planes;
}

const LUMA_SCALE = 219 / 255;
const CHROMA_SCALE = 224 / 255;

function lumaOf(red: number, green: number, blue: number): number {
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function writeChroma(planes: Uint8Array, pixels: Uint8Array, width: number, height: number): void {
  const quarter = (width / 2) * (height / 2);
  const mean = (at: number) =>
    ((pixels[at] ?? 0) +
      (pixels[at + 4] ?? 0) +
      (pixels[at + 4 * width] ?? 0) +
      (pixels[at + 4 * width + 4] ?? 0)) /
    4;
  let to = width * height;
  for (let y = 0; y < height; y += 2) {
    for (let x = 0; x < width; x += 2) {
      const from = 4 * (y * width + x);
      const red = mean(from);
      const blue = mean(from + 2);
      const luma = lumaOf(red, mean(from + 1), blue);
      planes[to] = Math.round(128 + (CHROMA_SCALE * (blue - luma)) / 1.8556);
      planes[to + quarter] = Math.round(128 + (CHROMA_SCALE * (red - luma)) / 1.5748);
      to += 1;
    }
  }
}
