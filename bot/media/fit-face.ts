import { FACE_LEADING, faceWidth } from './face-line.ts';
import { fitText } from './fit-text.ts';
import { measure } from './font.ts';

/** One card's lines and the size in CSS px at which every one of them fits. */
export interface FittedFace {
  readonly lines: readonly string[];
  readonly size: number;
}

/** The room to fill, and sizes in CSS px: the largest, those from which fewer lines please more, and the smallest. */
export interface FaceLimits {
  readonly maxWidth: number;
  readonly maxHeight: number;
  readonly size: number;
  /** A phrase is set on one line from here on, and else broken between its words. */
  readonly phraseFrom: number;
  /** A single word stays whole from here on, and else is broken at a hyphen or between its parts. */
  readonly wordFrom: number;
  readonly minSize: number;
}

const MOST_LINES = 3;
const SOFT_HYPHEN = '\u00ad';

/**
 * Sets one card as large as its width allows. A sum is never broken. A phrase ("half of 14") is broken between words before
 * it grows small, a number word at its hyphens ("vyf-en-twintig"), at soft hyphens it came with, or, written as one long
 * word, after its hundreds ("neunhundert-neunundneunzig"). A text too long even so is cut with an ellipsis.
 *
 * @example
 * fitFace('7 + ? = 10', { maxWidth: 400, maxHeight: 300, size: 110, phraseFrom: 60, wordFrom: 44, minSize: 28 }).lines; // => ['7 + ? = 10']
 */
export function fitFace(content: string, limits: FaceLimits): FittedFace {
  const whole = content.replaceAll(SOFT_HYPHEN, '');
  const single = sizeOf([whole], limits);
  const from = whole.includes(' ') ? limits.phraseFrom : limits.wordFrom;
  if (single >= (isSum(whole) ? limits.minSize : from)) return { lines: [whole], size: single };
  const ways = [whole.split(/(?<= )/), syllables(content)];
  const mostLines = Math.min(
    MOST_LINES,
    Math.max(1, Math.floor(limits.maxHeight / (limits.minSize * FACE_LEADING))),
  );
  for (let most = 2; most <= mostLines; most++) {
    for (const parts of ways) {
      const lines = largestSetting(parts, most, limits);
      const size = sizeOf(lines, limits);
      if (size >= limits.wordFrom) return { lines, size };
    }
  }
  const lines = largestSetting(syllables(content), mostLines, limits);
  const size = Math.max(sizeOf(lines, limits), limits.minSize);
  return { lines: lines.map((line) => cut(line, limits)), size };
}

/**
 * Whether a card is written in figures and signs alone.
 *
 * @example
 * isSum('7 + ? = 10'); // => true
 */
export function isSum(content: string): boolean {
  return !/\p{Letter}{2}/u.test(content);
}

/** The largest size, in half px, at which no line is wider than allowed and all of them are no higher. */
function sizeOf(lines: readonly string[], { maxWidth, maxHeight, size }: FaceLimits): number {
  const widest = Math.max(...lines.map((line) => faceWidth(line, 1)));
  const most = Math.min(maxWidth / widest, maxHeight / (lines.length * FACE_LEADING));
  return Math.min(size, Math.floor(most * 2) / 2);
}

/** Pieces at whose ends a line may end; a word broken inside shows a hyphen there. */
function syllables(content: string): string[] {
  return content
    .replace(/(?<=\p{Letter})-(?=\p{Letter})/gu, '-\n')
    .replace(/(?<=hundert)(?=\p{Letter})/gu, SOFT_HYPHEN)
    .replace(/ /g, ' \n')
    .replaceAll(SOFT_HYPHEN, `${SOFT_HYPHEN}\n`)
    .split('\n');
}

/** Of all ways to break into at most `most` lines, the one that can be set largest; of equals, the one with fewer and then evener lines. */
function largestSetting(parts: readonly string[], most: number, limits: FaceLimits): string[] {
  let best = joined([parts]);
  if (most < 2) return best;
  for (const lines of settings(parts, most).map(joined)) {
    const gain = sizeOf(lines, limits) - sizeOf(best, limits);
    const evener = lines.length === best.length && spread(lines) < spread(best);
    if (gain > 0 || (gain === 0 && evener)) best = lines;
  }
  return best;
}

/** Least when lines are equally wide. */
function spread(lines: readonly string[]): number {
  return lines.reduce((sum, line) => sum + faceWidth(line, 1) ** 2, 0);
}

function settings(parts: readonly string[], most: number): (readonly string[])[][] {
  const ways: (readonly string[])[][] = [];
  for (let first = 1; first < parts.length; first++) {
    const [head, rest] = [parts.slice(0, first), parts.slice(first)];
    ways.push([head, rest]);
    if (most > 2) ways.push(...settings(rest, most - 1).map((tail) => [head, ...tail]));
  }
  return ways.sort((a, b) => a.length - b.length);
}

function joined(lines: readonly (readonly string[])[]): string[] {
  return lines.map((parts) =>
    parts
      .join('')
      .trim()
      .replace(new RegExp(`${SOFT_HYPHEN}$`), '-')
      .replaceAll(SOFT_HYPHEN, ''),
  );
}

function cut(line: string, { maxWidth, minSize }: FaceLimits): string {
  const boxes = faceWidth(line, minSize) - measure(line, minSize, 700);
  const room = { maxWidth: maxWidth - boxes, size: minSize, minSize, weight: 700 } as const;
  return faceWidth(line, minSize) <= maxWidth ? line : fitText(line, room).text;
}
