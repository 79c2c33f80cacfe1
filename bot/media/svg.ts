import { type Weight, withoutMissingGlyphs } from './font.ts';
import type { Colour } from './palette.ts';
import { PALETTE } from './palette.ts';

/**
 * Where and how one line of text stands. `y` is the baseline; `anchor` says which part of the line `x` is. A `turned` line is
 * read upwards from that point.
 */
export interface TextStyle {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly weight?: Weight;
  readonly fill?: Colour;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly turned?: boolean;
}

/** How far, in em, the baseline lies below the middle of capitals and digits: half of Andika's cap height, 1485/2048. */
export const HALF_CAP = 0.3626;

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * A number as SVG writes it: at most two decimals, no `-0`, so equal drawings have equal bytes.
 *
 * @example
 * num(1 / 3); // => '0.33'
 */
export function num(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

/**
 * One line of text as an SVG element: the only place where text enters a picture, so the only place that escapes it.
 * Characters the font lacks are dropped; a line left empty draws nothing.
 *
 * @example
 * text({ x: 0, y: 10, size: 10 }, '<b>'); // contains '&lt;b&gt;'
 */
export function text(style: TextStyle, content: string): string {
  const line = withoutMissingGlyphs(content);
  if (line === '') return '';
  const { x, y, size, weight = 400, fill = PALETTE.ink, anchor = 'start' } = style;
  const turn = style.turned ? ` transform="rotate(-90 ${num(x)} ${num(y)})"` : '';
  const escaped = line.replace(/[&<>"']/g, (mark) => ENTITIES[mark] ?? '');
  return `<text x="${num(x)}" y="${num(y)}" font-size="${num(size)}" font-weight="${weight}" fill="${fill}" text-anchor="${anchor}"${turn}>${escaped}</text>`;
}

/** A filled rectangle with corner radius `r`, with an optional border drawn inside its edge. */
export function box(
  area: { x: number; y: number; width: number; height: number; r?: number },
  paint: { fill: Colour; border?: Colour; borderWidth?: number },
): string {
  const stroke = paint.border === undefined ? 0 : (paint.borderWidth ?? 1);
  const edge =
    paint.border === undefined ? '' : ` stroke="${paint.border}" stroke-width="${num(stroke)}"`;
  const size = `x="${num(area.x + stroke / 2)}" y="${num(area.y + stroke / 2)}" width="${num(area.width - stroke)}" height="${num(area.height - stroke)}"`;
  return `<rect ${size} rx="${num(area.r ?? 0)}" fill="${paint.fill}"${edge}/>`;
}

/** A straight rule from one point to another. */
export function rule(
  from: readonly [number, number],
  to: readonly [number, number],
  colour: Colour,
  width = 1,
): string {
  return `<path d="M${num(from[0])} ${num(from[1])}L${num(to[0])} ${num(to[1])}" stroke="${colour}" stroke-width="${num(width)}"/>`;
}
