import { MARGIN, PHONE_WIDTH } from './drawing.ts';
import { wrapText } from './fit-text.ts';
import type { Stretch } from './heading.ts';
import { PALETTE } from './palette.ts';
import { rule, text } from './svg.ts';

const SIZE = 15;
const LEADING = 22;

/**
 * A quiet sentence under a rule at the foot of a sheet; nothing at all when it is empty.
 *
 * @example
 * sheetFooter('', 100).bottom; // => 100
 */
export function sheetFooter(footer: string, top: number): Stretch {
  const lines = wrapText(footer, PHONE_WIDTH - 2 * MARGIN, SIZE, 400);
  if (lines.length === 0) return { svg: '', bottom: top };
  const svg = lines
    .map((line, i) =>
      text({ x: MARGIN, y: top + 30 + i * LEADING, size: SIZE, fill: PALETTE.softInk }, line),
    )
    .join('');
  return {
    svg: rule([MARGIN, top + 4], [PHONE_WIDTH - MARGIN, top + 4], PALETTE.line) + svg,
    bottom: top + 14 + lines.length * LEADING,
  };
}
