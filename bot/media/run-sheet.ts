import { type Drawing, drawingOf, MARGIN, PHONE_WIDTH } from './drawing.ts';
import { wrapText } from './fit-text.ts';
import { type Stretch, sheetHeading } from './heading.ts';
import { numberCell, numberSquare } from './number-square.ts';
import { squareWindow } from './square-window.ts';
import { HALF_CAP, text } from './svg.ts';
import { type PictureWords, pictureWords } from './words.ts';

/** One counting run: every number to say, in order, evenly spaced; and the highest number of its rung. */
export interface RunSheetInput {
  readonly title: string;
  readonly numbers: readonly number[];
  readonly limit: number;
  readonly words?: PictureWords;
}

/**
 * A counting run for the child: what to do in two short sentences, then the number square with only the start marked. Which
 * numbers come next, and where the run ends, is for the child to say.
 *
 * @throws {RangeError} when there is no number, when one is not whole, below 0 or over `limit`, or when the steps differ.
 * @example
 * runSheet({ title: '', numbers: [35, 40, 45], limit: 200 }).svg; // contains 'Count on in fives.'
 */
export function runSheet(input: RunSheetInput): Drawing {
  return sheet(input, []);
}

/**
 * The same run for the adult who helps: every number to say is marked as well.
 *
 * @throws {RangeError} as `runSheet` does.
 * @example
 * runAnswerSheet({ title: '', numbers: [35, 40, 45], limit: 200 }).svg; // contains 'to say'
 */
export function runAnswerSheet(input: RunSheetInput): Drawing {
  return sheet(input, input.numbers.slice(1));
}

function sheet(input: RunSheetInput, path: readonly number[]): Drawing {
  const { title, numbers, limit, words = pictureWords() } = input;
  const [first, second] = checked(numbers, limit);
  const heading = sheetHeading(title);
  const sentences = [
    words.startAt(first),
    ...(second === undefined ? [] : [words.count(second - first)]),
  ];
  const told = instructions(sentences, heading.bottom);
  const window = squareWindow(numbers, limit);
  const square = numberSquare({ window, start: first, path, top: told.bottom });
  const next = path[0];
  const legend = legendOf(
    [
      { number: first, mark: 'start', label: words.start },
      ...(next === undefined ? [] : [{ number: next, mark: 'path', label: words.path } as const]),
    ],
    square.bottom + 12,
  );
  const body = heading.svg + told.svg + square.svg + legend.svg;
  return drawingOf(PHONE_WIDTH, legend.bottom + MARGIN, body);
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

const LEGEND_CELL = { width: 34, height: 28 };
const LEGEND_SIZE = 16;

/** Each kind of marked cell once more, in its own look, with the word for it. */
function legendOf(
  entries: readonly { number: number; mark: 'start' | 'path'; label: string }[],
  top: number,
): Stretch {
  const width = (PHONE_WIDTH - 2 * MARGIN) / 2;
  const y = top + LEGEND_CELL.height / 2 + LEGEND_SIZE * HALF_CAP;
  const svg = entries
    .map(({ number, mark, label }, i) => {
      const x = MARGIN + i * width;
      return (
        numberCell({ ...LEGEND_CELL, x, y: top }, number, mark) +
        text({ x: x + LEGEND_CELL.width + 10, y, size: LEGEND_SIZE }, label)
      );
    })
    .join('');
  return { svg, bottom: top + LEGEND_CELL.height };
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
