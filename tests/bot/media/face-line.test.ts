import { describe, expect, it } from 'vitest';
import { drawingOf } from '../../../bot/media/drawing.ts';
import { faceLines, faceWidth } from '../../../bot/media/face-line.ts';
import { measure } from '../../../bot/media/font.ts';
import { rects, textBoxes } from './text-boxes.ts';

const drawn = (lines: readonly string[], align?: 'start') =>
  drawingOf(400, 100, faceLines({ x: 200, y: 50, size: 30, ...(align ? { align } : {}) }, lines));
const contents = (line: string) => textBoxes(drawn([line])).map(({ content }) => content);
const boxes = (line: string) => rects(drawn([line])).slice(1);

describe('faceLines', () => {
  it('draws an empty box where the number is missing, at any place', () => {
    expect(faceLines({ x: 100, y: 50, size: 30 }, ['? + 7 = 10'])).toContain('<rect');
    expect(contents('? + 7 = 10')).toEqual(['+ 7 = 10']);
    expect(contents('10 − ? = 7')).toEqual(['10 −', '= 7']);
    expect(contents('3 + 4 = ?')).toEqual(['3 + 4 =']);
    expect(['? + 7 = 10', '10 − ? = 7', '3 + 4 = ?'].map((line) => boxes(line).length)).toEqual([
      1, 1, 1,
    ]);
  });

  it('puts the box between what stands before and after it', () => {
    const [before, after] = textBoxes(drawn(['10 − ? = 7']));
    const [box] = boxes('10 − ? = 7');
    expect(box?.x).toBeGreaterThan(before?.right ?? Number.NaN);
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThan(after?.left ?? Number.NaN);
  });

  it('leaves a question mark at the end of a word alone', () => {
    expect(contents('what time?')).toEqual(['what time?']);
    expect(boxes('what time?')).toEqual([]);
  });

  it('centres the whole line, box and all', () => {
    const [after] = textBoxes(drawn(['? + 7 = 10']));
    const [box] = boxes('? + 7 = 10');
    expect(((box?.x ?? 0) + (after?.right ?? 0)) / 2).toBeCloseTo(200, 0);
  });

  it('begins at the point given when asked to', () => {
    expect(textBoxes(drawn(['3 + 4'], 'start'))[0]?.left).toBe(200);
  });
});

describe('faceWidth', () => {
  it('is the measured width in bold, and more with a box in it', () => {
    expect(faceWidth('3 + 4', 20)).toBe(measure('3 + 4', 20, 700));
    expect(faceWidth('7 + ?', 20) > measure('7 + ', 20, 700)).toBe(true);
  });
});
