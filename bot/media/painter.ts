import { Resvg } from '@resvg/resvg-js';
import type { Drawing } from './drawing.ts';
import { FONT_FILES } from './font.ts';
import { PALETTE } from './palette.ts';
import { encodeIndexedPng } from './png.ts';
import type { Rgb } from './png-palette.ts';

/** Turns drawings into PNG files. */
export interface Painter {
  /**
   * PNG bytes of the drawing, `pixelWidth` pixels wide and as high as its shape asks.
   *
   * @throws {RangeError} when `pixelWidth` is not a whole number from 1 to 4096.
   */
  readonly paint: (drawing: Drawing, pixelWidth: number) => Uint8Array;
}

// Sixteen fit four bits a pixel, a quarter to a third fewer bytes than more. With the palette's own colours kept exact and
// the rest left for blended edges, no difference shows at a phone's size.
const COLOURS = 16;
const WIDEST = 4096;
const FLAT = Object.values(PALETTE).map((hex): Rgb => {
  const channel = (at: number) => Number.parseInt(hex.slice(at, at + 2), 16);
  return [channel(1), channel(3), channel(5)];
});

/** A painter that knows only our own font files, so a picture looks the same on every machine. */
export function createPainter(): Painter {
  return {
    paint: (drawing, pixelWidth) => {
      const { pixels, width, height } = rasterise(drawing, pixelWidth);
      return encodeIndexedPng(pixels, width, height, COLOURS, FLAT);
    },
  };
}

/** Pixels as red, green, blue, alpha bytes, rows from the top. */
export interface Raster {
  readonly pixels: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/**
 * Pixels of a drawing in full colour, before the palette is chosen.
 *
 * @throws {RangeError} when `pixelWidth` is not a whole number from 1 to 4096.
 */
export function rasterise(drawing: Drawing, pixelWidth: number): Raster {
  if (!Number.isInteger(pixelWidth) || pixelWidth < 1 || pixelWidth > WIDEST) {
    throw new RangeError(`Got ${pixelWidth} pixels: a picture is 1 to ${WIDEST} wide.`);
  }
  const image = new Resvg(drawing.svg, {
    font: { loadSystemFonts: false, fontFiles: [...FONT_FILES], defaultFontFamily: 'Andika' },
    fitTo: { mode: 'width', value: pixelWidth },
  }).render();
  return { pixels: image.pixels, width: image.width, height: image.height };
}
