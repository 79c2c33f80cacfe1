import type { Yuv420 } from './yuv.ts';

/** How far from grey a colour difference may be and still be taken for grey, of 112. Paper, ink and rules are nearer; every accent is further. */
const NEARLY_GREY = 10;

/**
 * The picture with its nearly grey parts made exactly grey (chroma coring, as the trade calls it). The encoder is too coarse for the
 * faint warmth of paper and would show it in green and pink patches; grey it keeps, in fewer bytes. Brightness stays, and
 * with it every contrast.
 *
 * @example
 * neutralise(Uint8Array.of(235, 235, 235, 235, 124, 130)); // => 235, 235, 235, 235, 128, 128
 */
export function neutralise(picture: Yuv420): Yuv420 {
  const out = picture.slice();
  const luma = (picture.length * 2) / 3;
  const quarter = luma / 4;
  for (let at = luma; at < luma + quarter; at += 1) {
    if (isNearlyGrey(out[at]) && isNearlyGrey(out[at + quarter])) {
      out[at] = 128;
      out[at + quarter] = 128;
    }
  }
  return out;
}

function isNearlyGrey(chroma = 128): boolean {
  return Math.abs(chroma - 128) <= NEARLY_GREY;
}
