import { MARGIN, PHONE_WIDTH } from './drawing.ts';
import { fitText } from './fit-text.ts';
import { measure } from './font.ts';
import type { Stretch } from './heading.ts';
import { PALETTE } from './palette.ts';
import { requireScore, type StrandScore } from './strand-score.ts';
import { box, rule, text } from './svg.ts';

/** One strand over some weeks, the oldest first; `null` for a week in which it was not asked, which is missing and never zero. */
export interface StrandWeeks {
  readonly label: string;
  readonly weeks: readonly (StrandScore | null)[];
}

/** How the latest score is written beside the strand. */
export type WriteScore = (score: StrandScore) => string;

const WIDTH = PHONE_WIDTH - 2 * MARGIN;
const LABEL_SIZE = 18;
const BAR_HEIGHT = 56;
const WIDEST_BAR = 26;
const BAR_SHARE = 0.6;

/**
 * A strand's weeks as bars as high as the share right, over one base line and under a line for all right; the latest week is filled and has its score
 * in words. Every strand uses the same heights, so they can be compared by eye.
 *
 * @throws {RangeError} when a score has `right` below 0 or over `asked`.
 */
export function weekBars(strand: StrandWeeks, top: number, write: WriteScore): Stretch {
  const latest = strand.weeks.findLast((score) => score !== null && score.asked > 0) ?? null;
  const written = latest === null ? '' : write(latest);
  const room = WIDTH - measure(written, LABEL_SIZE, 700) - 12;
  const label = fitText(strand.label, {
    maxWidth: room,
    size: LABEL_SIZE,
    minSize: 15,
    weight: 400,
  });
  const of = strand.weeks.length;
  const width = Math.min(WIDEST_BAR, (BAR_SHARE * WIDTH) / of);
  const y = top + 20;
  const full = y + 14;
  const base = full + BAR_HEIGHT;
  const svg = [
    text({ x: MARGIN, y, size: label.size }, label.text),
    text({ x: PHONE_WIDTH - MARGIN, y, size: LABEL_SIZE, weight: 700, anchor: 'end' }, written),
    rule([MARGIN, full], [PHONE_WIDTH - MARGIN, full], PALETTE.line),
    ...strand.weeks.map((score, i) =>
      weekBar(score, middleOf(i, of), { base, width, latest: score === latest }),
    ),
    rule([MARGIN, base], [PHONE_WIDTH - MARGIN, base], PALETTE.softInk, 1.5),
  ];
  return { svg: svg.join(''), bottom: base + 12 };
}

/** The middle of a week's column, in CSS px from the left; weeks are counted from 0. */
export function middleOf(week: number, of: number): number {
  return MARGIN + ((week + 0.5) * WIDTH) / of;
}

interface BarPlace {
  readonly base: number;
  readonly width: number;
  readonly latest: boolean;
}

function weekBar(score: StrandScore | null, middle: number, place: BarPlace): string {
  const { base, width, latest } = place;
  if (score === null || score.asked === 0) {
    return rule([middle - 4, base - 6], [middle + 4, base - 6], PALETTE.softInk, 1.5);
  }
  requireScore(score);
  // A share of nought keeps a sliver, so that it is not taken for a week that was not asked.
  const height = Math.max(3, (BAR_HEIGHT * score.right) / score.asked);
  const fill = latest ? PALETTE.accent : PALETTE.tint;
  return box(
    { x: middle - width / 2, y: base - height, width, height },
    { fill, border: PALETTE.accent, borderWidth: 1.5 },
  );
}
