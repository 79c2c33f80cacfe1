import { describe, expect, it } from 'vitest';
import { drawingOf } from '../../../bot/media/drawing.ts';
import { sheetHeading } from '../../../bot/media/heading.ts';
import { digestPicture, resultCard } from '../../../bot/media/index.ts';
import { rasterise } from '../../../bot/media/painter.ts';
import { num, text } from '../../../bot/media/svg.ts';
import { textBoxes } from './text-boxes.ts';

const MISCHIEF = `<b>&amp;"O'Tto"</text><!-- ]]>`;

describe('num', () => {
  it('writes at most two decimals and no negative nought', () => {
    expect(num(1 / 3)).toBe('0.33');
    expect(num(-0.001)).toBe('0');
  });
});

describe('text', () => {
  it('escapes markup', () => {
    expect(text({ x: 0, y: 10, size: 10 }, '<b>')).toContain('&lt;b&gt;');
  });

  it('draws nothing when nothing can be drawn', () => {
    expect(text({ x: 0, y: 10, size: 10 }, '🦊')).toBe('');
  });
});

describe('markup in a name', () => {
  it('comes out as text in a digest', () => {
    const drawing = digestPicture({
      title: MISCHIEF,
      subtitle: '',
      dayLabels: ['Mon'],
      strandLabels: ['clock'],
      rows: [{ number: 1, name: MISCHIEF, days: ['practised'], strands: [null] }],
      footer: '',
    });
    expect(textBoxes(drawing)[0]?.content).toBe(MISCHIEF);
    expect(drawing.svg).not.toContain('<b>');
    expect(rasterise(drawing, 100).width).toBe(100);
  });

  it('comes out as text in a result card', () => {
    const drawing = resultCard({ title: 'A & <B>', lines: [], sayAgain: [], footer: '' });
    expect(textBoxes(drawing).map(({ content }) => content)).toEqual(['A & <B>']);
  });
});

describe('drawingOf', () => {
  it('rounds a fractional height up', () => {
    expect(drawingOf(360, 99.5, '').height).toBe(100);
  });
});

describe('sheetHeading', () => {
  it('takes only the margin when there is no title', () => {
    expect(sheetHeading('').bottom).toBe(16);
  });

  it('never takes more than three lines', () => {
    const lines = textBoxes(drawingOf(360, 200, sheetHeading('word '.repeat(80)).svg));
    expect(lines).toHaveLength(3);
    expect(lines[2]?.content.endsWith('…')).toBe(true);
  });
});
