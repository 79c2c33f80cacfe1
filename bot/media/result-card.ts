import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { fitText, wrapText } from './fit-text.ts';
import { measure } from './font.ts';
import { type Stretch, sheetHeading } from './heading.ts';
import { PALETTE } from './palette.ts';
import { type SayAgainCard, sayAgainCards } from './say-again-cards.ts';
import { sheetFooter } from './sheet-footer.ts';
import { requireScore } from './strand-score.ts';
import { box, num, text } from './svg.ts';
import { type PictureWords, pictureWords } from './words.ts';

/** One part of the evening. `asked` 0 means the part was not done: no score is drawn, only the note. */
export interface ResultLine {
  readonly label: string;
  readonly right: number;
  readonly asked: number;
  readonly note: string;
}

/** The end of one child's evening. Only the first three of `sayAgain` are drawn. */
export interface ResultCardInput {
  readonly title: string;
  readonly lines: readonly ResultLine[];
  readonly sayAgain: readonly SayAgainCard[];
  readonly footer: string;
  readonly words?: PictureWords;
}

const WIDTH = PHONE_WIDTH - 2 * MARGIN;
const MOST_DOTS = 20;

/**
 * The calm card at the end of an evening: each part's score against nobody else's, then up to three cards with their answers.
 * Up to 20 cards are shown as dots, filled for right; more as a bar.
 *
 * @throws {RangeError} when `right` is below 0 or over `asked`.
 * @example
 * resultCard({ title: 'Wren', lines: [{ label: 'doubles', right: 9, asked: 10, note: '' }], sayAgain: [], footer: '' }).svg; // contains '9 of 10'
 */
export function resultCard(input: ResultCardInput): Drawing {
  const words = input.words ?? pictureWords();
  const heading = sheetHeading(input.title);
  let body = heading.svg;
  let y = heading.bottom;
  for (const line of input.lines) {
    const drawn = partScore(line, y, words);
    body += drawn.svg;
    y = drawn.bottom;
  }
  const again = sayAgainCards(input.sayAgain.slice(0, 3), words.sayAgain, y + 6);
  const footer = sheetFooter(input.footer, again.bottom);
  return drawingOf(PHONE_WIDTH, footer.bottom + MARGIN, body + again.svg + footer.svg);
}

function partScore(line: ResultLine, top: number, words: PictureWords): Stretch {
  requireScore(line);
  const score = line.asked === 0 ? '' : words.score(line.right, line.asked);
  const room = WIDTH - measure(score, 20, 700) - 12;
  const { size, rows } = labelRows(line.label, room);
  const first = top + 22;
  let y = first + (rows.length - 1) * size * 1.25;
  let svg =
    rows.map((row, i) => text({ x: MARGIN, y: first + i * size * 1.25, size }, row)).join('') +
    text({ x: PHONE_WIDTH - MARGIN, y: first, size: 20, weight: 700, anchor: 'end' }, score);
  if (line.asked > 0) {
    y += 20;
    svg += line.asked <= MOST_DOTS ? dots(line, y) : bar(line, y);
    y += 6;
  }
  for (const note of wrapText(line.note, WIDTH, 16, 400, 2)) {
    y += 23;
    svg += text({ x: MARGIN, y, size: 16, fill: PALETTE.softInk }, note);
  }
  return { svg, bottom: y + 20 };
}

/** One line while it fits, or two of the smallest type: a step is not told from another by its beginning. */
function labelRows(label: string, maxWidth: number): { size: number; rows: readonly string[] } {
  const limits = { maxWidth, size: 20, minSize: 16, weight: 400 } as const;
  const wrapped = wrapText(label, maxWidth, limits.minSize, limits.weight, 2);
  if (wrapped.length > 1) return { size: limits.minSize, rows: wrapped };
  const fitted = fitText(label, limits);
  return { size: fitted.size, rows: [fitted.text] };
}

/** Filled for right, open for not yet: read without colour. Right ones come first, so the row says how many and not which. */
function dots({ right, asked }: ResultLine, y: number): string {
  const pitch = Math.min(24, WIDTH / asked);
  const radius = Math.min(8, pitch * 0.38);
  return Array.from({ length: asked }, (_, i) => {
    const cx = num(MARGIN + radius + i * pitch);
    return i < right
      ? `<circle cx="${cx}" cy="${num(y)}" r="${num(radius)}" fill="${PALETTE.accent}"/>`
      : `<circle cx="${cx}" cy="${num(y)}" r="${num(radius - 0.75)}" fill="${PALETTE.card}" stroke="${PALETTE.accent}" stroke-width="1.5"/>`;
  }).join('');
}

function bar({ right, asked }: ResultLine, y: number): string {
  const area = { x: MARGIN, y: y - 7, height: 14 };
  return (
    box(
      { ...area, width: WIDTH },
      { fill: PALETTE.card, border: PALETTE.accent, borderWidth: 1.5 },
    ) + box({ ...area, width: (WIDTH * right) / asked }, { fill: PALETTE.accent })
  );
}
