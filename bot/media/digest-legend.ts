import { dayMark } from './day-mark.ts';
import { missingMark } from './digest-row.ts';
import { MARGIN } from './drawing.ts';
import { measure } from './font.ts';
import type { Stretch } from './heading.ts';
import { PALETTE } from './palette.ts';
import { HALF_CAP, text } from './svg.ts';
import type { PictureWords } from './words.ts';

const SIZE = 16;
const LINE = 30;
const AFTER_MARK = 28;
const BETWEEN = 22;

/** Every mark beside its words, flowing over as many lines as the width asks. */
export function digestLegend(words: PictureWords, width: number, top: number): Stretch {
  const entries = [
    { draw: (x: number, y: number) => dayMark('practised', x, y), label: words.practised },
    { draw: (x: number, y: number) => dayMark('not_today', x, y), label: words.notToday },
    { draw: (x: number, y: number) => dayMark('silent', x, y), label: words.silent },
    { draw: (x: number, y: number) => dayMark('unsent', x, y), label: words.unsent },
    { draw: missingMark, label: words.notAsked },
  ];
  let svg = '';
  let x = MARGIN;
  let y = top + LINE / 2;
  for (const { draw, label } of entries) {
    const wide = AFTER_MARK + measure(label, SIZE, 400);
    if (x > MARGIN && x + wide > width - MARGIN) {
      x = MARGIN;
      y += LINE;
    }
    svg += draw(x + 10, y);
    svg += text(
      { x: x + AFTER_MARK, y: y + SIZE * HALF_CAP, size: SIZE, fill: PALETTE.softInk },
      label,
    );
    x += wide + BETWEEN;
  }
  return { svg, bottom: y + LINE / 2 };
}
