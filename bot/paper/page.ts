import { PALETTE } from '../media/palette.ts';
import { num } from '../media/svg.ts';
import { PAPERS, type PaperSize } from './paper-size.ts';

/** One page as SVG text. `width` and `height` are points, and so is every measure in it. */
export interface Page {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

// School printers are black and white: every colour of the screen becomes a grey that stays apart from its neighbours.
const IN_PRINT: Readonly<Record<keyof typeof PALETTE, string>> = {
  paper: '#ffffff',
  card: '#ffffff',
  ink: '#000000',
  softInk: '#484848',
  accent: '#000000',
  tint: '#dddddd',
  line: '#8c8c8c',
};
const GREYS: ReadonlyMap<string, string> = new Map(
  Object.entries(PALETTE).map(([name, colour]) => [colour, IN_PRINT[name as keyof typeof PALETTE]]),
);

/**
 * Wraps shapes of `bot/media` into a page on white paper, in greys.
 *
 * @example
 * pageOf('letter', '').width; // => 612
 */
export function pageOf(paper: PaperSize, body: string): Page {
  const { width, height } = PAPERS[paper];
  const grey = body.replace(/#[0-9a-f]{6}/g, (colour) => GREYS.get(colour) ?? colour);
  // Without width and height of its own the drawing fills the page it is put on.
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${num(width)} ${num(height)}" font-family="Andika">${grey}</svg>`;
  return { svg, width, height };
}
