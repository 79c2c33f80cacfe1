import { MARGIN } from './drawing.ts';
import { measure } from './font.ts';

/** Where the columns of the digest stand, in CSS px. Day and strand positions are the middles of their columns. */
export interface DigestColumns {
  readonly width: number;
  /** Right edge of the roster numbers. */
  readonly numberEnd: number;
  readonly name: number;
  readonly nameWidth: number;
  readonly days: readonly number[];
  readonly strands: readonly number[];
}

/** Width of a strand's column; labels and scores are fitted into it. */
export const STRAND_WIDTH = 68;
/** Width of a day's column. */
export const DAY_WIDTH = 38;
/** Size of names and numbers in a row. */
export const ROW_TEXT = 20;

const NARROWEST = 480;
const NAME_LEAST = 60;
const NAME_MOST = 150;
const GROUP_GAP = 12;

/**
 * Places the columns: names as wide as the longest asks, within limits; a picture of few columns gives them the rest.
 *
 * @example
 * digestColumns({ numbers: [1], names: ['Wren'], days: 1, strands: 1 }).width; // => 480
 */
export function digestColumns(content: {
  readonly numbers: readonly number[];
  readonly names: readonly string[];
  readonly days: number;
  readonly strands: number;
}): DigestColumns {
  const longest = (texts: readonly string[]) =>
    Math.max(0, ...texts.map((each) => measure(each, ROW_TEXT, 400)));
  const numberWidth = longest(content.numbers.map(String));
  const wanted = Math.min(Math.max(longest(content.names), NAME_LEAST), NAME_MOST);
  const numberEnd = MARGIN + numberWidth;
  const name = numberEnd + 10;
  const rest =
    GROUP_GAP + content.days * DAY_WIDTH + GROUP_GAP + content.strands * STRAND_WIDTH + MARGIN;
  const width = Math.max(NARROWEST, Math.ceil(name + wanted + rest));
  const firstDay = width - rest + GROUP_GAP;
  const firstStrand = firstDay + content.days * DAY_WIDTH + GROUP_GAP;
  const middles = (first: number, step: number, count: number) =>
    Array.from({ length: count }, (_, i) => first + (i + 0.5) * step);
  return {
    width,
    numberEnd,
    name,
    nameWidth: width - rest - name,
    days: middles(firstDay, DAY_WIDTH, content.days),
    strands: middles(firstStrand, STRAND_WIDTH, content.strands),
  };
}
