import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakLines, fitText, wrapText } from '../../../bot/media/fit-text.ts';
import { fitTogether } from '../../../bot/media/fit-together.ts';
import { measure } from '../../../bot/media/font.ts';

describe('fitText', () => {
  it('leaves a short line alone', () => {
    const limits = { maxWidth: 200, size: 20, minSize: 14, weight: 400 } as const;
    expect(fitText('Wren', limits)).toEqual({ text: 'Wren', size: 20 });
  });

  it('shrinks before it cuts, and cuts with an ellipsis', () => {
    const limits = { maxWidth: 100, size: 20, minSize: 14, weight: 400 } as const;
    const shrunk = fitText('Juniper Fern', limits);
    expect(shrunk.text).toBe('Juniper Fern');
    expect(shrunk.size).toBeLessThan(20);
    const cut = fitText('Tamarind the Second of Oakfield', limits);
    expect(cut.size).toBe(14);
    expect(cut.text).toMatch(/^Tamarind.*…$/);
  });

  it('never exceeds the width, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 60 }),
        fc.integer({ min: 40, max: 300 }),
        (content, maxWidth) => {
          const fitted = fitText(content, { maxWidth, size: 24, minSize: 12, weight: 700 });
          expect(measure(fitted.text, fitted.size, 700)).toBeLessThanOrEqual(maxWidth);
        },
      ),
    );
  });
});

describe('breakLines', () => {
  it('gives a word too wide a line of its own', () => {
    expect(breakLines('one two', 1, 10, 400)).toEqual(['one', 'two']);
  });

  it('gives no line for no text', () => {
    expect(breakLines('  ', 100, 10, 400)).toEqual([]);
  });
});

describe('wrapText', () => {
  it('stops at the most lines allowed', () => {
    const lines = wrapText('one two three', 40, 10, 400, 2);
    expect(lines).toHaveLength(2);
    expect(wrapText('one two three four five', 40, 10, 400, 2)[1]).toMatch(/…$/);
  });

  it('leaves no short last line when the words can be shared out', () => {
    const [first = '', second = ''] = wrapText(
      'look at two or three weeks before you decide',
      240,
      16,
      400,
    );
    expect(measure(second, 16, 400)).toBeGreaterThan(measure(first, 16, 400) / 2);
  });

  it('keeps every word and never exceeds the width', () => {
    const words = fc.array(fc.constantFrom('pages', 'done', 'Pebble', 'Path', 'a', 'breakfast'), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(words, (list) => {
        const lines = wrapText(list.join(' '), 120, 16, 400);
        expect(lines.join(' ')).toBe(list.join(' '));
        for (const line of lines) expect(measure(line, 16, 400)).toBeLessThanOrEqual(120);
      }),
    );
  });
});

describe('fitTogether', () => {
  const limits = { maxWidth: 140, size: 32, oneLineFrom: 22, minSize: 17 };

  it('uses the largest size when everything fits', () => {
    expect(fitTogether(['3 + 4'], { ...limits, maxWidth: 500 }).size).toBe(32);
  });

  it('breaks a long number word after its hyphen or at a space, onto two lines at most', () => {
    const { lines } = fitTogether(['one hundred and seventy-seven', 'six'], limits);
    expect(lines[1]).toEqual(['six']);
    expect(lines[0]).toHaveLength(2);
    expect(lines[0]?.join(' ').replace('- ', '-')).toBe('one hundred and seventy-seven');
  });

  it('cuts what cannot fit on two lines at the smallest size', () => {
    expect(fitTogether(['y'.repeat(60)], limits).lines[0]?.[0]).toMatch(/^y+…$/);
  });

  it('has nothing to fit when there are no texts', () => {
    expect(fitTogether([], limits)).toEqual({ size: 32, lines: [] });
  });
});
