import { MARGIN } from './drawing.ts';
import { measure } from './font.ts';
import type { Stretch } from './heading.ts';
import { PALETTE } from './palette.ts';
import { HALF_CAP, text } from './svg.ts';

/** A mark, drawn about 20 CSS px wide around the point it is given, and the words for it. */
export interface LegendEntry {
  readonly draw: (x: number, y: number) => string;
  readonly label: string;
}

const SIZE = 16;
const LINE = 30;
const AFTER_MARK = 28;
const BETWEEN = 22;

/** Every mark beside its words, flowing over as many lines as the width asks. */
export function legend(entries: readonly LegendEntry[], width: number, top: number): Stretch {
  let svg = '';
  let x = MARGIN;
  let y = top + LINE / 2;
  for (const { draw, label } of entries) {
    const wide = AFTER_MARK + measure(label, SIZE, 400);
    if (x > MARGIN && x + wide > width - MARGIN) {
      x = MARGIN;
      y += LINE;
    }
    const style = { x: x + AFTER_MARK, y: y + SIZE * HALF_CAP, size: SIZE } as const;
    svg += draw(x + 10, y) + text({ ...style, fill: PALETTE.softInk }, label);
    x += wide + BETWEEN;
  }
  return { svg, bottom: y + LINE / 2 };
}
