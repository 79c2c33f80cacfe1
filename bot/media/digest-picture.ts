import { DAY_WIDTH, type DigestColumns, digestColumns, STRAND_WIDTH } from './digest-columns.ts';
import { digestLegend } from './digest-legend.ts';
import { type DigestRow, digestRow, ROW_HEIGHT } from './digest-row.ts';
import { type Drawing, drawingOf, MARGIN } from './drawing.ts';
import { fitText, wrapText } from './fit-text.ts';
import { fitTogether } from './fit-together.ts';
import { drawable } from './font.ts';
import type { Stretch } from './heading.ts';
import { PALETTE } from './palette.ts';
import { rule, text } from './svg.ts';
import { type PictureWords, pictureWords } from './words.ts';

export type { DigestRow } from './digest-row.ts';

/**
 * A class's week: 1 to 60 children, 1 to 7 days, 0 to 8 strands (0 when nobody practised). `footer` carries the caution about
 * small samples.
 */
export interface DigestPictureInput {
  readonly title: string;
  readonly subtitle: string;
  readonly dayLabels: readonly string[];
  readonly strandLabels: readonly string[];
  readonly rows: readonly DigestRow[];
  readonly footer: string;
  readonly words?: PictureWords;
}

/**
 * The teacher's week at a glance: children in roster order, a mark per day, right and asked per strand, and a legend.
 * A name the font cannot draw leaves the roster number to stand for the child.
 *
 * @throws {RangeError} when rows, days or strands are too few or too many.
 * @example
 * digestPicture({ title: 'Kingfisher', subtitle: '', dayLabels: ['Mon'], strandLabels: ['clock'], footer: '',
 *   rows: [{ number: 1, name: 'Wren', days: ['practised'], strands: [{ right: 9, asked: 10 }] }] }).svg; // contains '9/10'
 */
export function digestPicture(input: DigestPictureInput): Drawing {
  requireCount('rows', input.rows.length, 1, 60);
  requireCount('days', input.dayLabels.length, 1, 7);
  requireCount('strands', input.strandLabels.length, 0, 8);
  const columns = digestColumns({
    numbers: input.rows.map(({ number }) => number),
    names: input.rows.map(({ name }) => drawable(name, '')),
    days: input.dayLabels.length,
    strands: input.strandLabels.length,
  });
  const heading = headingOf(input, columns.width);
  const labels = columnLabels(input, columns, heading.bottom);
  let body = heading.svg + labels.svg;
  let y = labels.bottom;
  for (const row of input.rows) {
    body +=
      rule([MARGIN, y], [columns.width - MARGIN, y], PALETTE.line) + digestRow(row, columns, y);
    y += ROW_HEIGHT;
  }
  body += rule([MARGIN, y], [columns.width - MARGIN, y], PALETTE.softInk, 1.5);
  const legend = digestLegend(input.words ?? pictureWords(), columns.width, y + 12);
  const footer = footerOf(input.footer, columns.width, legend.bottom);
  return drawingOf(columns.width, footer.bottom + MARGIN, body + legend.svg + footer.svg);
}

function requireCount(what: string, count: number, least: number, most: number): void {
  if (count < least || count > most) {
    throw new RangeError(
      `Got ${count} ${what} in a digest picture: from ${least} to ${most} can be drawn.`,
    );
  }
}

function headingOf({ title, subtitle }: DigestPictureInput, width: number): Stretch {
  const room = { maxWidth: width - 2 * MARGIN, minSize: 18 };
  const top = fitText(title, { ...room, size: 30, weight: 700 });
  const under = fitText(subtitle, { ...room, size: 18, weight: 400 });
  return {
    svg:
      text({ x: MARGIN, y: 46, size: top.size, weight: 700 }, top.text) +
      text({ x: MARGIN, y: 74, size: under.size, fill: PALETTE.softInk }, under.text),
    bottom: 92,
  };
}

const LABEL_LEADING = 17;

function columnLabels(input: DigestPictureInput, columns: DigestColumns, top: number): Stretch {
  const limits = { size: 16, oneLineFrom: 16, minSize: 11 };
  const days = fitTogether(input.dayLabels, { ...limits, maxWidth: DAY_WIDTH - 4 });
  const strands = fitTogether(input.strandLabels, { ...limits, maxWidth: STRAND_WIDTH - 4 });
  const lowest = top + 8 + 2 * LABEL_LEADING;
  const column = (lines: readonly string[], x: number, size: number) =>
    lines
      .map((line, i) => {
        const y = lowest - (lines.length - 1 - i) * LABEL_LEADING;
        return text({ x, y, size, weight: 700, anchor: 'middle' }, line);
      })
      .join('');
  const svg = [
    ...columns.days.map((x, i) => column(days.lines[i] ?? [], x, days.size)),
    ...columns.strands.map((x, i) => column(strands.lines[i] ?? [], x, strands.size)),
  ].join('');
  return { svg, bottom: lowest + 10 };
}

function footerOf(footer: string, width: number, top: number): Stretch {
  const lines = wrapText(footer, width - 2 * MARGIN, 16, 400);
  const svg = lines
    .map((line, i) =>
      text({ x: MARGIN, y: top + 26 + i * 23, size: 16, fill: PALETTE.softInk }, line),
    )
    .join('');
  return { svg, bottom: lines.length === 0 ? top : top + 10 + lines.length * 23 };
}
