import { PALETTE } from './palette.ts';

/** A finished picture as SVG text. `width` and `height` are CSS px of the design; the first shape is an opaque rectangle over the whole picture. */
export interface Drawing {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** The width, in CSS px, of the sheets a family reads: a narrow phone held upright. */
export const PHONE_WIDTH = 360;

/** Space, in CSS px, kept free along every edge of a picture. */
export const MARGIN = 16;

/**
 * Wraps shapes into a picture on paper. A fractional height is rounded up, so nothing at the foot is cut.
 *
 * @example
 * drawingOf(360, 99.5, '').height; // => 100
 */
export function drawingOf(width: number, height: number, body: string): Drawing {
  const w = Math.ceil(width);
  const h = Math.ceil(height);
  // The PNG encoder ignores transparency, so the paper has to be a shape and not a style.
  const paper = `<rect width="${w}" height="${h}" fill="${PALETTE.paper}"/>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${h}" viewBox="0 0 ${w} ${h}" font-family="Andika">${paper}${body}</svg>`;
  return { svg, width: w, height: h };
}
