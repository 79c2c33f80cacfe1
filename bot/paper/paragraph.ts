import { breakLines, wrapText } from '../media/fit-text.ts';
import { measure, type Weight } from '../media/font.ts';
import { PALETTE } from '../media/palette.ts';
import { text } from '../media/svg.ts';
import type { Strip } from './flow.ts';

/** How a paragraph is set, in points. `x` is its left edge; `hang` indents the lines after the first. */
export interface ParagraphStyle {
  readonly x: number;
  readonly width: number;
  readonly size: number;
  readonly weight?: Weight;
  readonly soft?: boolean;
  readonly hang?: number;
  readonly after?: number;
  readonly maxLines?: number;
}

const LEADING = 1.4;

/**
 * Words set in as many lines as they need, as a strip of a page; `after` is the space below it. Of no words, nothing high.
 *
 * @example
 * paragraph('', { x: 0, width: 100, size: 10 }).height; // => 0
 */
export function paragraph(content: string, style: ParagraphStyle): Strip {
  const { x, size, weight = 400, soft = false, hang = 0, after = 0 } = style;
  const lines = linesOf(content, style);
  const leading = size * LEADING;
  const fill = soft ? PALETTE.softInk : PALETTE.ink;
  return {
    height: lines.length === 0 ? 0 : lines.length * leading + after,
    draw: (y) =>
      lines
        .map((line, i) =>
          text(
            { x: x + (i > 0 ? hang : 0), y: y + (i + 0.78) * leading, size, weight, fill },
            line,
          ),
        )
        .join(''),
  };
}

/** Headings have lines about as long as one another, running text fills each line; a word wider than a line is cut either way. */
function linesOf(
  content: string,
  { width, size, weight = 400, hang = 0, maxLines }: ParagraphStyle,
) {
  const within = width - hang;
  const balanced = wrapText(content, within, size, weight, maxLines);
  const filled = breakLines(content, within, size, weight);
  const isWhole = filled.length <= (maxLines ?? filled.length);
  const fits = filled.every((line) => measure(line, size, weight) <= within);
  return weight === 400 && isWhole && fits ? filled : balanced;
}

/** Strips under one another as one, from its own top. */
export function stack(strips: readonly Strip[]): Strip {
  return {
    height: strips.reduce((sum, { height }) => sum + height, 0),
    draw: (y) => {
      let at = y;
      let svg = '';
      for (const strip of strips) {
        svg += strip.draw(at);
        at += strip.height;
      }
      return svg;
    },
  };
}

/** Two strips side by side, as high as the higher one. */
export function beside(left: Strip, right: Strip): Strip {
  return {
    height: Math.max(left.height, right.height),
    draw: (y) => left.draw(y) + right.draw(y),
  };
}
