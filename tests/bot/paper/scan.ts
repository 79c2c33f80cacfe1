import jsqr from 'jsqr';
import type { PrintedPage } from './open-pdf.ts';

/** What a phone's camera reads at one place of a page of join slips, two by three and counted from 0; null for nothing. */
export async function scanSlip(
  page: PrintedPage,
  place: number,
  scale = 3,
): Promise<string | null> {
  const { rgba, width, height } = await page.paint(scale);
  const cell = { width: Math.floor(width / 2), height: Math.floor(height / 3) };
  const left = (place % 2) * cell.width;
  const top = Math.floor(place / 2) * cell.height;
  const pixels = new Uint8ClampedArray(4 * cell.width * cell.height);
  for (let row = 0; row < cell.height; row += 1) {
    const from = 4 * ((top + row) * width + left);
    pixels.set(rgba.subarray(from, from + 4 * cell.width), 4 * row * cell.width);
  }
  return jsqr.default(pixels, cell.width, cell.height)?.data ?? null;
}
