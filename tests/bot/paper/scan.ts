import jsqr from 'jsqr';
import type { Painted, PrintedPage } from './open-pdf.ts';

const painted = new WeakMap<PrintedPage, Map<number, Promise<Painted>>>();

/** Paints a page once at each scale, however many of its places are looked at. */
function paintedOnce(page: PrintedPage, scale: number): Promise<Painted> {
  const scales = painted.get(page) ?? new Map<number, Promise<Painted>>();
  painted.set(page, scales);
  const picture = scales.get(scale) ?? page.paint(scale);
  scales.set(scale, picture);
  return picture;
}

/** What a phone's camera reads at one place of a page of join slips, two by three and counted from 0; null for nothing. */
export async function scanSlip(
  page: PrintedPage,
  place: number,
  scale = 3,
): Promise<string | null> {
  const { rgba, width, height } = await paintedOnce(page, scale);
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
