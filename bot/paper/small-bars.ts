import { PALETTE } from '../media/palette.ts';
import { requireScore, type StrandScore } from '../media/strand-score.ts';
import { box, num, rule } from '../media/svg.ts';

/** Where bars stand, in points: `y` is the top of a bar in which all was right. */
export interface BarsPlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const WIDEST = 12;

/**
 * A strand's weeks as small bars, as high as the share right, under a broken line for all right; the latest is filled. A week
 * without marks has a short rule: it is missing and never nought.
 *
 * @throws {RangeError} when a score has `right` below 0 or over `asked`.
 */
export function smallBars(weeks: readonly (StrandScore | null)[], place: BarsPlace): string {
  const { x, y, width, height } = place;
  const step = Math.min(2 * WIDEST, width / Math.max(1, weeks.length));
  const bar = Math.min(WIDEST, step * 0.62);
  const base = y + height;
  // Weeks stand at the right edge, so that the latest is under the latest of every other strand.
  const left = x + width - step * weeks.length;
  const latest = weeks.findLastIndex((score) => score !== null && score.asked > 0);
  const bars = weeks.map((score, i) => {
    const middle = left + (i + 0.5) * step;
    if (score === null || score.asked === 0) {
      return rule([middle - 3, base - 3], [middle + 3, base - 3], PALETTE.softInk, 0.75);
    }
    requireScore(score);
    // A share of nought keeps a sliver, so that it is not taken for a week without marks.
    const high = Math.max(1.5, (height * score.right) / score.asked);
    const area = { x: middle - bar / 2, y: base - high, width: bar, height: high };
    const fill = i === latest ? PALETTE.accent : PALETTE.tint;
    return box(area, { fill, border: PALETTE.accent, borderWidth: 0.75 });
  });
  const full = `<path d="M${num(left)} ${num(y)}H${num(x + width)}" stroke="${PALETTE.line}" stroke-width="0.6" stroke-dasharray="2 2"/>`;
  return full + bars.join('') + rule([left, base], [x + width, base], PALETTE.softInk, 0.75);
}
