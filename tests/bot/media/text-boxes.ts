import type { Drawing } from '../../../bot/media/drawing.ts';
import { measure } from '../../../bot/media/font.ts';

/** A line of text as drawn, with the box its capitals, digits and descenders take; `fill` is its colour. */
export interface TextBox {
  readonly content: string;
  readonly size: number;
  readonly fill: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A rectangle of a drawing. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const CAPITALS = 0.74;
const DESCENDERS = 0.2;

/** Every line of text in a drawing, measured; a turned one is read upwards. */
export function textBoxes({ svg }: Drawing): TextBox[] {
  const element =
    /<text x="([^"]*)" y="([^"]*)" font-size="([^"]*)" font-weight="([^"]*)" fill="([^"]*)" text-anchor="([^"]*)"( transform="rotate\(-90 [^"]*")?>([^<]*)<\/text>/g;
  const boxes = [...svg.matchAll(element)].map((found) => {
    const [, x, y, em, weight, fill = '', anchor, turned, escaped = ''] = found;
    const content = unescaped(escaped);
    const size = Number(em);
    const width = measure(content, size, weight === '700' ? 700 : 400);
    const before = anchor === 'end' ? width : anchor === 'middle' ? width / 2 : 0;
    const [up, down] = [CAPITALS * size, DESCENDERS * size];
    const [startX, startY] = [Number(x), Number(y)];
    const box =
      turned === undefined
        ? { left: startX - before, top: startY - up, width, height: up + down }
        : { left: startX - up, top: startY + before - width, width: up + down, height: width };
    const { left, top } = box;
    return { content, size, fill, left, right: left + box.width, top, bottom: top + box.height };
  });
  const written = svg.split('<text ').length - 1;
  if (boxes.length !== written)
    throw new Error(`Read ${boxes.length} of ${written} text elements.`);
  return boxes;
}

/** Every rectangle of a drawing, the paper first. */
export function rects({ svg }: Drawing): Rect[] {
  return [...svg.matchAll(/<rect ([^>]*)\/>/g)].map(([, attributes = '']) => {
    const of = (name: string) =>
      Number(new RegExp(`(?:^| )${name}="([^"]*)"`).exec(attributes)?.[1] ?? 0);
    return { x: of('x'), y: of('y'), width: of('width'), height: of('height') };
  });
}

/** Every circle of a drawing: centre and radius. */
export function circles({ svg }: Drawing): { cx: number; cy: number; r: number }[] {
  return [...svg.matchAll(/<circle cx="([^"]*)" cy="([^"]*)" r="([^"]*)"/g)].map(
    ([, cx, cy, r]) => ({
      cx: Number(cx),
      cy: Number(cy),
      r: Number(r),
    }),
  );
}

function unescaped(content: string): string {
  return content
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}
