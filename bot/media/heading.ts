import { MARGIN, PHONE_WIDTH } from './drawing.ts';
import { wrapText } from './fit-text.ts';
import { PALETTE } from './palette.ts';
import { rule, text } from './svg.ts';

/** A drawn stretch and the height, in CSS px from the top of the picture, at which the next may begin. */
export interface Stretch {
  readonly svg: string;
  readonly bottom: number;
}

const SIZE = 22;
const LEADING = 28;

/**
 * The title of a sheet over a short accent rule, wrapped to at most three lines. An empty title takes only the margin.
 *
 * @example
 * sheetHeading('').bottom; // => 16
 */
export function sheetHeading(title: string): Stretch {
  const lines = wrapText(title, PHONE_WIDTH - 2 * MARGIN, SIZE, 700, 3);
  if (lines.length === 0) return { svg: '', bottom: MARGIN };
  const svg = lines
    .map((line, i) => text({ x: MARGIN, y: 38 + i * LEADING, size: SIZE, weight: 700 }, line))
    .join('');
  const foot = 38 + (lines.length - 1) * LEADING + 14;
  return {
    svg: svg + rule([MARGIN, foot], [MARGIN + 40, foot], PALETTE.accent, 3),
    bottom: foot + 18,
  };
}
