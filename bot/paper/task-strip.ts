import type { CardFace } from '../../drills/index.ts';
import { faceLines, faceWidth } from '../media/face-line.ts';
import { wrapText } from '../media/fit-text.ts';
import { measure } from '../media/font.ts';
import { PALETTE } from '../media/palette.ts';
import { box, HALF_CAP, rule, text } from '../media/svg.ts';
import type { PaperWords } from '../texts/paper.ts';
import type { Strip } from './flow.ts';
import { EDGE, innerWidth, type PaperSize } from './paper-size.ts';
import { smallClock } from './small-clock.ts';

/** One part of one day: its cards, or one sentence for a counting run, and how many answers are asked for. */
export interface PaperTask {
  readonly title: string;
  readonly faces: readonly CardFace[];
  readonly asked: number;
}

const TITLE_WIDTH = 84;
const SCORE_WIDTH = 66;
const GAP = 10;
const SIZE = 12;
const LINE = 18;
const RADIUS = 23;
const CLOCK_LINE = 2 * RADIUS + 2;
const BOX = { width: 28, height: 20 };
/** Space above and below what stands in a strip. */
const INSET = 2.5;

interface Placed {
  readonly face: CardFace;
  readonly x: number;
}

interface Line {
  readonly cards: readonly Placed[];
  readonly height: number;
}

/** One part of a day on a practice sheet: its name, its cards in lines, and a box for the score. */
export function taskStrip(task: PaperTask, paper: PaperSize, words: PaperWords): Strip {
  const titles = wrapText(task.title, TITLE_WIDTH, 9, 400, 3);
  const left = EDGE + TITLE_WIDTH + GAP;
  const end = EDGE + innerWidth(paper);
  const rows = linesOf(task.faces, left, end - SCORE_WIDTH - GAP);
  const body = rows.reduce((sum, { height }) => sum + height, 0);
  const height = Math.max(body, titles.length * 11 + 5, BOX.height) + 2 * INSET;
  return {
    height,
    draw: (y) => {
      let at = y + INSET;
      let svg = titles
        .map((line, i) =>
          text({ x: EDGE, y: y + 14 + i * 11, size: 9, fill: PALETTE.softInk }, line),
        )
        .join('');
      for (const { cards, height: lineHeight } of rows) {
        svg += cards.map((card) => cardAt(card, at + lineHeight / 2)).join('');
        at += lineHeight;
      }
      svg += scoreBox(words.outOf(task.asked), end, y + INSET);
      return svg + rule([EDGE, y + height], [end, y + height], PALETTE.line, 0.5);
    },
  };
}

function linesOf(faces: readonly CardFace[], left: number, end: number): Line[] {
  const pitch = columnWidth(faces, end - left);
  const perLine = Math.max(1, Math.floor((end - left + GAP) / pitch));
  const lines: Line[] = [];
  for (let first = 0; first < faces.length; first += perLine) {
    const some = faces.slice(first, first + perLine);
    const height = some.some(({ kind }) => kind === 'clock') ? CLOCK_LINE : LINE;
    lines.push({ cards: some.map((face, i) => ({ face, x: left + i * pitch })), height });
  }
  return lines;
}

/** Cards of one part stand under one another, as wide as the widest of them and a gap. */
function columnWidth(faces: readonly CardFace[], room: number): number {
  const widths = faces.map((face) =>
    face.kind === 'clock' ? 2 * RADIUS : faceWidth(face.text, SIZE) + GAP,
  );
  return Math.min(room, Math.max(...widths)) + GAP;
}

function cardAt({ face, x }: Placed, middle: number): string {
  return face.kind === 'clock'
    ? smallClock(face, { x, middle, radius: RADIUS })
    : faceLines({ x, y: middle, size: SIZE, align: 'start' }, [face.text]);
}

function scoreBox(outOf: string, end: number, y: number): string {
  const x = end - SCORE_WIDTH;
  const middle = y + BOX.height / 2;
  const size = measure(outOf, 10, 400) > SCORE_WIDTH - BOX.width - 4 ? 8.5 : 10;
  return (
    box({ x, y, ...BOX, r: 3 }, { fill: PALETTE.card, border: PALETTE.ink, borderWidth: 1 }) +
    text({ x: x + BOX.width + 5, y: middle + size * HALF_CAP, size }, outOf)
  );
}
