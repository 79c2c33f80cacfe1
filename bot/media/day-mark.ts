import { PALETTE } from './palette.ts';
import { num } from './svg.ts';

/**
 * What became of one child's evening: practised; the family said not today; no answer came; it could not be delivered;
 * or there was none to send.
 */
export type DayState = 'practised' | 'not_today' | 'silent' | 'unsent' | 'none';

/**
 * The mark of a day, centred, about 18 CSS px across. Each state has its own shape, so the marks read in greyscale;
 * `none` is left blank, because nothing was asked.
 *
 * @example
 * dayMark('none', 10, 10); // => ''
 */
export function dayMark(state: DayState, cx: number, cy: number): string {
  const at = (dx: number, dy: number) => `${num(cx + dx)} ${num(cy + dy)}`;
  switch (state) {
    case 'practised':
      return (
        `<circle cx="${num(cx)}" cy="${num(cy)}" r="9" fill="${PALETTE.accent}"/>` +
        `<path d="M${at(-4, 0.4)}L${at(-1.2, 3.4)}L${at(4.2, -3)}" fill="none" stroke="${PALETTE.card}" stroke-width="2.2" stroke-linecap="round" stroke-linejoin="round"/>`
      );
    case 'not_today':
      return (
        `<rect x="${num(cx - 8)}" y="${num(cy - 8)}" width="16" height="16" rx="4" fill="${PALETTE.tint}" stroke="${PALETTE.accent}" stroke-width="1.5"/>` +
        `<path d="M${at(-4, 0)}L${at(4, 0)}" stroke="${PALETTE.ink}" stroke-width="2.2" stroke-linecap="round"/>`
      );
    case 'silent':
      return `<circle cx="${num(cx)}" cy="${num(cy)}" r="7.5" fill="none" stroke="${PALETTE.softInk}" stroke-width="1.8"/>`;
    case 'unsent':
      return `<path d="M${at(0, -6)}L${at(6, 0)}L${at(0, 6)}L${at(-6, 0)}Z" fill="${PALETTE.softInk}"/>`;
    case 'none':
      return '';
  }
}
