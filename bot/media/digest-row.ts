import { type DayState, dayMark } from './day-mark.ts';
import { type DigestColumns, ROW_TEXT, STRAND_WIDTH } from './digest-columns.ts';
import { fitText } from './fit-text.ts';
import { drawable } from './font.ts';
import { PALETTE } from './palette.ts';
import type { StrandScore } from './strand-score.ts';
import { HALF_CAP, num, rule, text } from './svg.ts';

/** One child's week; `null` for a strand not asked, which is missing and never zero. */
export interface DigestRow {
  readonly number: number;
  readonly name: string;
  readonly days: readonly DayState[];
  readonly strands: readonly (StrandScore | null)[];
}

/** Height of one row, in CSS px. */
export const ROW_HEIGHT = 42;

/** One row whose top is at `top`: roster number, name, a mark per day, a score and a bar per strand. */
export function digestRow(row: DigestRow, columns: DigestColumns, top: number): string {
  const middle = top + ROW_HEIGHT / 2;
  const y = middle + ROW_TEXT * HALF_CAP;
  const name = fitText(drawable(row.name, ''), {
    maxWidth: columns.nameWidth,
    size: ROW_TEXT,
    minSize: 16,
    weight: 400,
  });
  return [
    text(
      { x: columns.numberEnd, y, size: ROW_TEXT, fill: PALETTE.softInk, anchor: 'end' },
      String(row.number),
    ),
    text({ x: columns.name, y, size: name.size }, name.text),
    ...columns.days.map((x, i) => dayMark(row.days[i] ?? 'none', x, middle)),
    ...columns.strands.map((x, i) => strandCell(row.strands[i] ?? null, x, middle)),
  ].join('');
}

/** The quiet mark of a strand that was not asked. */
export function missingMark(cx: number, cy: number): string {
  return rule([cx - 6, cy], [cx + 6, cy], PALETTE.softInk, 1.5);
}

const BAR_WIDTH = 50;

function strandCell(score: StrandScore | null, cx: number, middle: number): string {
  if (score === null || score.asked === 0) return missingMark(cx, middle);
  const written = fitText(`${score.right}/${score.asked}`, {
    maxWidth: STRAND_WIDTH - 8,
    size: ROW_TEXT,
    minSize: 12,
    weight: 400,
  });
  const frame = `x="${num(cx - BAR_WIDTH / 2)}" y="${num(middle + 8)}" height="6"`;
  const filled = BAR_WIDTH * Math.min(Math.max(score.right / score.asked, 0), 1);
  return (
    text({ x: cx, y: middle + 3, size: written.size, anchor: 'middle' }, written.text) +
    `<rect ${frame} width="${BAR_WIDTH}" rx="3" fill="${PALETTE.line}"/>` +
    `<rect ${frame} width="${num(filled)}" rx="3" fill="${PALETTE.accent}"/>`
  );
}
