import { COUNTED_REACH, countedClock } from './counted-clock.ts';
import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { fitText, wrapText } from './fit-text.ts';
import { type Stretch, sheetHeading } from './heading.ts';
import { PALETTE } from './palette.ts';
import { HALF_CAP, text } from './svg.ts';

/** One hand: what it is called by its length and thickness, and what it says. */
export interface HandWords {
  readonly hand: string;
  readonly says: string;
}

/** A time in words and in figures. */
export interface TimeWords {
  readonly phrase: string;
  readonly figures: string;
}

/** One clock and how it is read. */
export interface ClockAidInput extends TimeWords {
  readonly hour: number;
  readonly minute: number;
  readonly short: HandWords;
  readonly long: HandWords;
  readonly left: string | null;
}

/** Several clocks, each under its number, with the two rules of reading above them. */
export interface ClockAidSheetInput {
  readonly title: string;
  readonly rules: readonly string[];
  readonly clocks: readonly (TimeWords & {
    readonly number: number;
    readonly hour: number;
    readonly minute: number;
  })[];
}

const WIDTH = PHONE_WIDTH - 2 * MARGIN;
const RADIUS = 92;
const SIZE = 17;
const LEADING = 22;

/**
 * One clock with its answer explained: minutes counted round the rim, the time in words and figures, and what each hand says.
 * The hands are told apart by length and thickness.
 *
 * @example
 * clockAid({ hour: 3, minute: 30, phrase: 'half past three', figures: '3:30', ...words }).width; // => 360
 */
export function clockAid(input: ClockAidInput): Drawing {
  const reach = RADIUS * COUNTED_REACH;
  const middle = PHONE_WIDTH / 2;
  const clock = countedClock({ ...input, cx: middle, cy: MARGIN + reach, radius: RADIUS });
  const time = timeLine(input, middle, MARGIN + 2 * reach + 30);
  let y = time.bottom + 16;
  let body = clock + time.svg;
  for (const { hand, says } of [input.short, input.long]) {
    body += text({ x: MARGIN, y, size: SIZE, weight: 700 }, hand);
    const drawn = paragraph(says, y + LEADING);
    body += drawn.svg;
    y = drawn.bottom + 8;
  }
  const left = input.left === null ? { svg: '', bottom: y } : paragraph(input.left, y);
  return drawingOf(PHONE_WIDTH, left.bottom - LEADING + MARGIN, body + left.svg);
}

function timeLine({ phrase, figures }: TimeWords, x: number, y: number): Stretch {
  const line = `${phrase} · ${figures}`;
  const fitted = fitText(line, { maxWidth: WIDTH, size: 25, minSize: 17, weight: 700 });
  const style = { x, y, size: fitted.size, weight: 700, anchor: 'middle' } as const;
  return { svg: text(style, fitted.text), bottom: y + 16 };
}

/** Lines from a first baseline on; `bottom` is the baseline that would come next. */
function paragraph(content: string, first: number): Stretch {
  const lines = wrapText(content, WIDTH, SIZE, 400);
  const svg = lines.map((line, i) => text({ x: MARGIN, y: first + i * LEADING, size: SIZE }, line));
  return { svg: svg.join(''), bottom: first + lines.length * LEADING };
}

const GAP = 10;
const CELL = (WIDTH - GAP) / 2;
const SMALL_RADIUS = CELL / 2 / COUNTED_REACH;
const UNDER = 15;

/**
 * All clocks of a part with their answers, two in a row, their minutes counted round the rim.
 *
 * @throws {RangeError} when there is no clock.
 * @example
 * clockAidSheet({ title: 'How to read it', rules: [], clocks: [{ number: 1, hour: 3, minute: 0, phrase: 'three o’clock', figures: '3:00' }] }).width; // => 360
 */
export function clockAidSheet({ title, rules, clocks }: ClockAidSheetInput): Drawing {
  if (clocks.length === 0) throw new RangeError('A clock aid needs at least one clock.');
  const heading = sheetHeading(title);
  let body = heading.svg;
  let y = heading.bottom + 8;
  for (const rule of rules) {
    const drawn = paragraph(rule, y);
    body += drawn.svg;
    y = drawn.bottom + 4;
  }
  let top = rules.length === 0 ? heading.bottom : y - LEADING + GAP + 8;
  for (let first = 0; first < clocks.length; first += 2) {
    const row = clocks
      .slice(first, first + 2)
      .map((clock, i) => cell(clock, MARGIN + i * (CELL + GAP), top));
    body += row.map(({ svg }) => svg).join('');
    top = Math.max(...row.map(({ bottom }) => bottom)) + GAP;
  }
  return drawingOf(PHONE_WIDTH, top - GAP + MARGIN, body);
}

function cell(clock: ClockAidSheetInput['clocks'][number], x: number, y: number): Stretch {
  const middle = x + CELL / 2;
  const face = countedClock({ ...clock, cx: middle, cy: y + CELL / 2, radius: SMALL_RADIUS });
  const number = text(
    { x, y: y + 12 * (0.5 + HALF_CAP), size: 15, weight: 700, fill: PALETTE.accent },
    String(clock.number),
  );
  const lines = [
    ...wrapText(clock.phrase, CELL, UNDER, 700, 2).map((line) => ({ line, weight: 700 as const })),
    { line: clock.figures, weight: 400 as const },
  ];
  const first = y + CELL + UNDER;
  const under = lines.map(({ line, weight }, i) =>
    text({ x: middle, y: first + i * 18, size: UNDER, weight, anchor: 'middle' }, line),
  );
  return { svg: face + number + under.join(''), bottom: first + (lines.length - 1) * 18 + 6 };
}
