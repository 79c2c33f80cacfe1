import { faceWidth } from './face-line.ts';
import { breakLines, fitText } from './fit-text.ts';
import { measure } from './font.ts';

/** Texts broken into lines, all to be set at one size. */
export interface FittedLines {
  readonly size: number;
  readonly lines: readonly (readonly string[])[];
}

/** Sizes in CSS px: the largest, the smallest at which single lines still please, and the smallest allowed at all. */
export interface TogetherLimits {
  readonly maxWidth: number;
  readonly size: number;
  readonly oneLineFrom: number;
  readonly minSize: number;
}

/**
 * One bold size for several texts, so that labels of one picture look alike: the largest at which each fits on one line;
 * if that is under `oneLineFrom`, the largest at which each fits on two. Whatever is still too wide is ellipsised.
 *
 * @example
 * fitTogether(['3 + 4'], { maxWidth: 500, size: 32, oneLineFrom: 22, minSize: 17 }).size; // => 32
 */
export function fitTogether(texts: readonly string[], limits: TogetherLimits): FittedLines {
  const { maxWidth, size, oneLineFrom, minSize } = limits;
  const widest = Math.max(0, ...texts.map((each) => faceWidth(each, 1)));
  const single = Math.min(size, Math.floor((maxWidth / widest) * 2) / 2);
  if (single >= oneLineFrom) return { size: single, lines: texts.map((each) => [each]) };
  for (let smaller = oneLineFrom; smaller >= minSize; smaller -= 0.5) {
    const lines = texts.map((each) => breakable(each, maxWidth, smaller));
    if (
      lines.every(
        (each) => each.length <= 2 && each.every((line) => faceWidth(line, smaller) <= maxWidth),
      )
    ) {
      return { size: smaller, lines };
    }
  }
  return { size: minSize, lines: texts.map((each) => [cut(each, maxWidth, minSize)]) };
}

/** The line with an ellipsis; an answer box in it is wider than the mark that stands for it. */
function cut(content: string, maxWidth: number, size: number): string {
  const boxes = faceWidth(content, size) - measure(content, size, 700);
  return fitText(content, { maxWidth: maxWidth - boxes, size, minSize: size, weight: 700 }).text;
}

/** Lines broken at spaces and after hyphens inside words ("seventy-three"). */
function breakable(content: string, maxWidth: number, size: number): string[] {
  if (faceWidth(content, size) <= maxWidth) return [content];
  const spaced = content.replace(/(?<=\p{L})-(?=\p{L})/gu, '- ');
  return breakLines(spaced, maxWidth, size, 700).map((line) =>
    line.replace(/(?<=\p{L})- (?=\p{L})/gu, '-'),
  );
}
