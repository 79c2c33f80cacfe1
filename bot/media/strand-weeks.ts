import { MARGIN, PHONE_WIDTH } from './drawing.ts';
import { fitText } from './fit-text.ts';
import { measure } from './font.ts';
import type { Stretch } from './heading.ts';
import { PALETTE } from './palette.ts';
import { text } from './svg.ts';
import { middleOf, type StrandWeeks, type WriteScore, weekBars } from './week-bars.ts';

export type { StrandWeeks } from './week-bars.ts';

const WIDTH = PHONE_WIDTH - 2 * MARGIN;
const WEEK_SIZE = 13;

/** Strands under one another over one row of week labels; nothing at all when there are no strands. */
export function strandWeeks(
  strands: readonly StrandWeeks[],
  labels: readonly string[],
  top: number,
  write: WriteScore,
): Stretch {
  if (strands.length === 0) return { svg: '', bottom: top };
  let svg = '';
  let y = top;
  for (const strand of strands) {
    const drawn = weekBars(strand, y, write);
    svg += drawn.svg;
    y = drawn.bottom;
  }
  const weeks = weekLabels(labels, y);
  return { svg: svg + weeks.svg, bottom: weeks.bottom };
}

/**
 * Refuses weeks that cannot be drawn.
 *
 * @throws {RangeError} when there are no or more than 12, or when a strand has another number of them.
 */
export function requireWeeks(labels: readonly string[], strands: readonly StrandWeeks[]): void {
  if (labels.length < 1 || labels.length > 12) {
    throw new RangeError(`Got ${labels.length} weeks: from 1 to 12 can be drawn.`);
  }
  for (const { label, weeks } of strands) {
    if (weeks.length !== labels.length) {
      throw new RangeError(
        `Got ${weeks.length} weeks of ${label} under ${labels.length} labels: give one for each.`,
      );
    }
  }
}

/** The weeks' labels under the bars; when they do not all fit, only the first and the last. */
function weekLabels(labels: readonly string[], top: number): Stretch {
  const step = WIDTH / labels.length;
  const style = { y: top + 6, size: WEEK_SIZE, fill: PALETTE.softInk } as const;
  const fits = labels.every((label) => measure(label, WEEK_SIZE, 400) <= step - 4);
  const ends = [labels[0] ?? '', labels.length > 1 ? (labels.at(-1) ?? '') : ''].map((label) =>
    fitText(label, { maxWidth: WIDTH / 2 - 8, size: WEEK_SIZE, minSize: WEEK_SIZE, weight: 400 }),
  );
  const svg = fits
    ? labels.map((label, i) =>
        text({ ...style, x: middleOf(i, labels.length), anchor: 'middle' }, label),
      )
    : [
        text({ ...style, x: MARGIN }, ends[0]?.text ?? ''),
        text({ ...style, x: PHONE_WIDTH - MARGIN, anchor: 'end' }, ends[1]?.text ?? ''),
      ];
  return { svg: svg.join(''), bottom: top + 16 };
}
