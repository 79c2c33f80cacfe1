import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { wrapText } from './fit-text.ts';
import { type Stretch, sheetHeading } from './heading.ts';
import { numberSquare } from './number-square.ts';
import { text } from './svg.ts';
import { ENGLISH, type PictureWords } from './words.ts';

/** One counting run: every number to say, in order, evenly spaced; and the highest number of its rung. */
export interface RunSheetInput {
  readonly title: string;
  readonly numbers: readonly number[];
  readonly limit: number;
  readonly words?: PictureWords;
}

/**
 * A counting run: what to do in two short sentences, then the rows of the number square it passes through,
 * ten numbers to a row, the path marked and the start labelled. Nought stands above ten, one step before one.
 *
 * @throws {RangeError} when there is no number, when one is not whole, below 0 or over `limit`, or when the steps differ.
 * @example
 * runSheet({ title: '', numbers: [35, 40, 45], limit: 200 }).svg; // contains 'Count on in fives.'
 */
export function runSheet({ title, numbers, limit, words = ENGLISH }: RunSheetInput): Drawing {
  const [first, second] = checked(numbers, limit);
  const heading = sheetHeading(title);
  const sentences = [
    words.startAt(first),
    ...(second === undefined ? [] : [words.count(second - first)]),
  ];
  const told = instructions(sentences, heading.bottom);
  const square = numberSquare({ numbers, limit, startWord: words.start, top: told.bottom });
  return drawingOf(PHONE_WIDTH, square.bottom + MARGIN, heading.svg + told.svg + square.svg);
}

const SIZE = 30;
const LEADING = 38;

function instructions(sentences: readonly string[], top: number): Stretch {
  const lines = sentences.flatMap((each) => wrapText(each, PHONE_WIDTH - 2 * MARGIN, SIZE, 700));
  const svg = lines
    .map((line, i) => text({ x: MARGIN, y: top + 26 + i * LEADING, size: SIZE, weight: 700 }, line))
    .join('');
  return { svg, bottom: top + lines.length * LEADING + 8 };
}

function checked(numbers: readonly number[], limit: number): readonly [number, number?] {
  const [first, second] = numbers;
  if (first === undefined) throw new RangeError('A counting run needs at least one number.');
  const step = (second ?? first) - first;
  for (const [i, number] of numbers.entries()) {
    if (!Number.isInteger(number) || number < 0 || number > limit) {
      throw new RangeError(`Got ${number} in a run: numbers are whole, from 0 to ${limit}.`);
    }
    if (number !== first + i * step || (i > 0 && step === 0)) {
      throw new RangeError(
        `Got ${number} after steps of ${step}: a run's steps are all alike and not 0.`,
      );
    }
  }
  return second === undefined ? [first] : [first, second];
}
