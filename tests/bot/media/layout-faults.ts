import { MARGIN } from '../../../bot/media/drawing.ts';
import type { Drawing } from '../../../bot/media/index.ts';
import { circles, type Rect, rects, type TextBox, textBoxes } from './text-boxes.ts';

const TOUCH = 0.5;

const shared = (aFrom: number, aTo: number, bFrom: number, bTo: number) =>
  Math.min(aTo, bTo) - Math.max(aFrom, bFrom);

const overlap = (a: TextBox, b: TextBox) =>
  shared(a.left, a.right, b.left, b.right) > TOUCH &&
  shared(a.top, a.bottom, b.top, b.bottom) > TOUCH;

const crosses = (box: TextBox, rect: Rect) => {
  const wide = shared(box.left, box.right, rect.x, rect.x + rect.width);
  const high = shared(box.top, box.bottom, rect.y, rect.y + rect.height);
  const inside = wide >= box.right - box.left - 0.01 && high >= box.bottom - box.top - 2;
  return wide > TOUCH && high > 2 && !inside;
};

/**
 * What is wrong with where the texts of a drawing stand, in words; empty when nothing is. Boxes are measured, so capitals and
 * descenders count even where a line has none; 2 px of them may lie on a box's edge.
 */
export function layoutFaults(drawing: Drawing): string[] {
  const boxes = textBoxes(drawing);
  return [...offPaper(boxes, drawing), ...collisions(boxes), ...acrossEdges(boxes, drawing)];
}

function offPaper(boxes: readonly TextBox[], { width, height }: Drawing): string[] {
  return boxes
    .filter(
      ({ left, right, top, bottom }) =>
        left < MARGIN - 1 || right > width - MARGIN + 1 || top <= 0 || bottom >= height,
    )
    .map(({ content }) => `"${content}" leaves its paper`);
}

function collisions(boxes: readonly TextBox[]): string[] {
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => overlap(a, b))
      .map((b) => `"${a.content}" touches "${b.content}"`),
  );
}

function acrossEdges(boxes: readonly TextBox[], drawing: Drawing): string[] {
  const areas = rects(drawing).slice(1);
  const faces = circles(drawing).filter(({ r }) => r > 20);
  return boxes.flatMap((box) => [
    ...areas
      .filter((area) => crosses(box, area))
      .map((area) => `"${box.content}" crosses a box at ${area.x}, ${area.y}`),
    ...faces.filter((face) => cuts(box, face)).map(() => `"${box.content}" touches a clock`),
  ]);
}

function cuts(box: TextBox, { cx, cy, r }: { cx: number; cy: number; r: number }): boolean {
  const x = Math.min(Math.max(cx, box.left), box.right);
  const y = Math.min(Math.max(cy, box.top), box.bottom);
  const middle = [(box.left + box.right) / 2 - cx, (box.top + box.bottom) / 2 - cy] as const;
  return Math.hypot(...middle) >= r && Math.hypot(x - cx, y - cy) < r;
}
