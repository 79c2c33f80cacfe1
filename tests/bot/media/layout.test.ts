import { describe, expect, it } from 'vitest';
import { MARGIN } from '../../../bot/media/drawing.ts';
import { SAMPLES } from './samples.ts';
import { circles, type Rect, rects, type TextBox, textBoxes } from './text-boxes.ts';

const within = (box: TextBox, rect: Rect, slack: number) =>
  box.left >= rect.x - slack && box.right <= rect.x + rect.width + slack;

const centred = (box: TextBox, rect: Rect) => {
  const x = (box.left + box.right) / 2;
  const y = (box.top + box.bottom) / 2;
  return x >= rect.x && x <= rect.x + rect.width && y >= rect.y && y <= rect.y + rect.height;
};

const overlap = (a: TextBox, b: TextBox) =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.5 &&
  Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.5;

describe.each(Object.entries(SAMPLES))('the picture "%s"', (_, drawing) => {
  const boxes = textBoxes(drawing);

  it('begins with paper over its whole area', () => {
    expect(rects(drawing)[0]).toEqual({ x: 0, y: 0, width: drawing.width, height: drawing.height });
  });

  it('keeps every line of text off the edges', () => {
    for (const box of boxes) {
      expect(box.left, box.content).toBeGreaterThanOrEqual(MARGIN - 1);
      expect(box.right, box.content).toBeLessThanOrEqual(drawing.width - MARGIN + 1);
      expect(box.top, box.content).toBeGreaterThan(0);
      expect(box.bottom, box.content).toBeLessThan(drawing.height);
    }
  });

  it('keeps every line of text inside the box it stands in', () => {
    for (const box of boxes) {
      const around = rects(drawing).filter((rect) => centred(box, rect));
      expect(
        around.every((rect) => within(box, rect, 0)),
        box.content,
      ).toBe(true);
    }
  });

  it('lets no two lines of text touch', () => {
    const collisions = boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter((b) => overlap(a, b))
        .map((b) => `${a.content} / ${b.content}`),
    );
    expect(collisions).toEqual([]);
  });

  it('lets no clock touch the words around it', () => {
    const faces = circles(drawing).filter(({ r }) => r > 30);
    for (const { cx, cy, r } of faces) {
      for (const box of boxes) {
        const x = Math.min(Math.max(cx, box.left), box.right);
        const y = Math.min(Math.max(cy, box.top), box.bottom);
        const inside =
          Math.hypot((box.left + box.right) / 2 - cx, (box.top + box.bottom) / 2 - cy) < r;
        expect(inside || Math.hypot(x - cx, y - cy) >= r, box.content).toBe(true);
      }
    }
  });

  it('sets no text smaller than 11 CSS px', () => {
    expect(Math.min(...boxes.map(({ size }) => size), 99)).toBeGreaterThanOrEqual(11);
  });
});
