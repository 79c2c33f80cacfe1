import { measure, type Weight, withoutMissingGlyphs } from './font.ts';

/** A line that fits, and the size in CSS px at which it does. */
export interface FittedText {
  readonly text: string;
  readonly size: number;
}

/** How far a line may give way before it is cut: from `size` down to `minSize`, in CSS px. */
export interface FitLimits {
  readonly maxWidth: number;
  readonly size: number;
  readonly minSize: number;
  readonly weight: Weight;
}

/**
 * Fits one line into a width: first smaller type down to `minSize`, then an ellipsis. Widths are measured, never guessed.
 *
 * @example
 * fitText('Wren', { maxWidth: 200, size: 20, minSize: 14, weight: 400 }); // => { text: 'Wren', size: 20 }
 */
export function fitText(content: string, limits: FitLimits): FittedText {
  const { maxWidth, size, minSize, weight } = limits;
  const line = withoutMissingGlyphs(content);
  const em = measure(line, 1, weight);
  if (em * size <= maxWidth) return { text: line, size };
  // Half a px is the finest step the eye tells apart here, and keeps the SVG short.
  const smaller = Math.floor((maxWidth / em) * 2) / 2;
  if (smaller >= minSize) return { text: line, size: smaller };
  return { text: shorten(line, maxWidth, minSize, weight), size: minSize };
}

/**
 * Breaks text at spaces into lines no wider than `maxWidth`; a single word wider than that keeps its line and sticks out.
 *
 * @example
 * breakLines('one two', 1, 10, 400); // => ['one', 'two']
 */
export function breakLines(
  content: string,
  maxWidth: number,
  size: number,
  weight: Weight,
): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of withoutMissingGlyphs(content).split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && measure(longer, size, weight) > maxWidth) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  return line === '' ? lines : [...lines, line];
}

/**
 * Breaks text into at most `maxLines` lines, none wider than `maxWidth`: a word too wide, and the last line when
 * more would follow, end in an ellipsis.
 *
 * @example
 * wrapText('one two three', 40, 10, 400, 2).length; // => 2
 */
export function wrapText(
  content: string,
  maxWidth: number,
  size: number,
  weight: Weight,
  maxLines = Number.POSITIVE_INFINITY,
): string[] {
  const lines = balanced(content, maxWidth, size, weight);
  if (lines.length > maxLines) {
    const rest = lines.splice(maxLines - 1).join(' ');
    lines.push(shorten(rest, maxWidth, size, weight));
  }
  return lines.map((line) =>
    measure(line, size, weight) <= maxWidth ? line : shorten(line, maxWidth, size, weight),
  );
}

/** As few lines as `maxWidth` allows, then about equally long ones, so that no word is left alone on the last. */
function balanced(content: string, maxWidth: number, size: number, weight: Weight): string[] {
  let lines = breakLines(content, maxWidth, size, weight);
  for (let width = maxWidth - 4; width > maxWidth / 2; width -= 4) {
    const narrower = breakLines(content, width, size, weight);
    const sticksOut = narrower.some((line) => measure(line, size, weight) > width);
    if (sticksOut || narrower.length > lines.length) break;
    lines = narrower;
  }
  return lines;
}

function shorten(line: string, maxWidth: number, size: number, weight: Weight): string {
  const characters = [...line];
  while (characters.length > 0) {
    const cut = `${characters.join('').trimEnd()}…`;
    if (measure(cut, size, weight) <= maxWidth) return cut;
    characters.pop();
  }
  return '…';
}
