import type { Drawing } from '../../../bot/media/index.ts';
import { type TextBox, textBoxes } from './text-boxes.ts';

/** A text and the colour of the last filled box or disc drawn before it under its middle. */
export interface TextOnGround {
  readonly text: TextBox;
  readonly ground: string;
}

interface Shape {
  readonly fill: string;
  readonly holds: (x: number, y: number) => boolean;
}

/** Every text of a drawing with the ground it stands on, in the order they are drawn. */
export function textsOnGrounds(drawing: Drawing): TextOnGround[] {
  const boxes = textBoxes(drawing);
  const shapes: Shape[] = [];
  const found: TextOnGround[] = [];
  for (const [element] of drawing.svg.matchAll(/<(?:rect|circle|text) [^>]*>/g)) {
    if (!element.startsWith('<text')) {
      shapes.push(shapeOf(element));
      continue;
    }
    const text = boxes[found.length];
    if (text === undefined) throw new Error('There are more texts than boxes.');
    const [x, y] = [(text.left + text.right) / 2, (text.top + text.bottom) / 2];
    found.push({ text, ground: shapes.findLast(({ holds }) => holds(x, y))?.fill ?? 'none' });
  }
  return found;
}

function shapeOf(element: string): Shape {
  const of = (name: string) => new RegExp(` ${name}="([^"]*)"`).exec(element)?.[1];
  const at = (name: string) => Number(of(name) ?? 0);
  const fill = of('fill') ?? 'none';
  if (element.startsWith('<circle')) {
    const [cx, cy, r] = [at('cx'), at('cy'), at('r')];
    return { fill, holds: (x, y) => Math.hypot(x - cx, y - cy) < r };
  }
  const [left, top, width, height] = [at('x'), at('y'), at('width'), at('height')];
  const holds = (x: number, y: number) =>
    x >= left && x <= left + width && y >= top && y <= top + height;
  return { fill, holds };
}
