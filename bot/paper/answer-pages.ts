import type { CardFace } from '../../drills/index.ts';
import { faceLines, faceWidth } from '../media/face-line.ts';
import { fitText } from '../media/fit-text.ts';
import { fitTogether } from '../media/fit-together.ts';
import { PALETTE } from '../media/palette.ts';
import { HALF_CAP, rule, text } from '../media/svg.ts';
import type { PaperWords } from '../texts/paper.ts';
import type { PaperCard } from './cards-to-cut.ts';
import { flow, type Group, type Strip } from './flow.ts';
import type { Page } from './page.ts';
import { bodyOf, framed } from './page-frame.ts';
import { EDGE, innerWidth, type PaperSize } from './paper-size.ts';
import { smallClock } from './small-clock.ts';

/** The cards of some parts with their answers, numbered as the cards to cut out are. `title` says whose they are. */
export interface AnswersInput {
  readonly title: string;
  readonly right: string;
  readonly cards: readonly PaperCard[];
  readonly paper: PaperSize;
  readonly words: PaperWords;
}

interface Numbered {
  readonly card: PaperCard;
  readonly number: number;
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const GAP = 22;
const NUMBER_WIDTH = 26;
const SIZE = 13;
const ROW = 22;
const CLOCK_ROW = 50;
const CLOCK_RADIUS = 22;
const HEADING = 26;

/**
 * Every card with its answer, for the adult who helps: two columns under each part's name, read across. An answer too long for
 * its half of the page has a line to itself.
 *
 * @throws {RangeError} when there is no card.
 * @example
 * answerPages({ title: 'Kingfisher class', right: '', cards, paper: 'a4', words }).length; // => 1 for ten cards
 */
export function answerPages(input: AnswersInput): Page[] {
  const { cards, paper, words } = input;
  if (cards.length === 0) throw new RangeError('An answer sheet needs at least one card.');
  const numbered = cards.map((card, i) => ({ card, number: i + 1 }));
  const parts = [...new Set(cards.map(({ part }) => part))];
  const groups = parts.map((part): Group => {
    const own = numbered.filter(({ card }) => card.part === part);
    return [heading(part, paper), ...rowsOf(own, paper)];
  });
  const title = `${input.title} · ${words.answers}`;
  return framed(flow(groups, { ...bodyOf(paper), gap: 8 }), {
    paper,
    title,
    right: input.right,
    footer: '',
    pageOf: words.page,
  });
}

function heading(part: string, paper: PaperSize): Strip {
  const width = innerWidth(paper);
  const fitted = fitText(part, { maxWidth: width, size: 12, minSize: 9, weight: 700 });
  return {
    height: HEADING,
    draw: (y) => text({ x: EDGE, y: y + 17, size: fitted.size, weight: 700 }, fitted.text),
  };
}

function rowsOf(items: readonly Numbered[], paper: PaperSize): Strip[] {
  const half = (innerWidth(paper) - GAP) / 2;
  const isShort = ({ card }: Numbered) =>
    card.face.kind === 'clock' ||
    NUMBER_WIDTH + faceWidth(card.face.text, SIZE) + 10 + faceWidth(card.answer, SIZE) <= half;
  const columns = items.every(isShort) ? 2 : 1;
  const width = columns === 2 ? half : innerWidth(paper);
  const strips: Strip[] = [];
  for (let first = 0; first < items.length; first += columns) {
    const row = items.slice(first, first + columns);
    const height = row.some(({ card }) => card.face.kind === 'clock') ? CLOCK_ROW : ROW;
    const draw = (y: number) =>
      row
        .map((item, i) => answered(item, { x: EDGE + i * (width + GAP), y, width, height }))
        .join('');
    strips.push({ height, draw });
  }
  return strips;
}

function answered({ card, number }: Numbered, { x, y, width, height }: Place): string {
  const middle = y + height / 2;
  const taken = card.face.kind === 'clock' ? 2 * CLOCK_RADIUS : faceWidth(card.face.text, SIZE);
  const answer = fitTogether([card.answer], {
    maxWidth: Math.max(width - NUMBER_WIDTH - taken - 10, width / 3),
    size: SIZE,
    oneLineFrom: 11,
    minSize: 7,
  });
  const [line = '', ...more] = answer.lines[0] ?? [];
  const leading = answer.size * 1.15;
  const first = middle + answer.size * HALF_CAP - (more.length * leading) / 2;
  const style = { x: x + width, size: answer.size, weight: 700, anchor: 'end' } as const;
  return [
    rule([x, y + height], [x + width, y + height], PALETTE.line, 0.5),
    text({ x, y: middle + 10 * HALF_CAP, size: 10, fill: PALETTE.softInk }, String(number)),
    faceAt(card.face, x + NUMBER_WIDTH, middle),
    ...[line, ...more].map((each, i) => text({ ...style, y: first + i * leading }, each)),
  ].join('');
}

function faceAt(face: CardFace, x: number, middle: number): string {
  return face.kind === 'text'
    ? faceLines({ x, y: middle, size: SIZE, align: 'start' }, [face.text])
    : smallClock(face, { x, middle, radius: CLOCK_RADIUS });
}
