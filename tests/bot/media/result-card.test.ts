import { describe, expect, it } from 'vitest';
import { type ResultLine, resultCard } from '../../../bot/media/index.ts';
import { clockPhrase, isLanguage, LANGUAGES } from '../../../drills/index.ts';
import { clock, LONG_WORDS, run, written } from './faces.ts';
import { circles, rects, textBoxes } from './text-boxes.ts';

const card = (line: ResultLine) =>
  resultCard({ title: 'Wren', lines: [line], sayAgain: [], footer: '' });
const line = (right: number, asked: number): ResultLine => ({
  label: 'doubles',
  right,
  asked,
  note: 'your best so far',
});

describe('resultCard', () => {
  it('writes the part, its score and the note', () => {
    const contents = textBoxes(card(line(9, 10))).map(({ content }) => content);
    expect(contents).toEqual(['Wren', 'doubles', '9 of 10', 'your best so far']);
  });

  it('draws one dot for each card asked, filled only for those right', () => {
    const drawing = card(line(7, 10));
    expect(circles(drawing)).toHaveLength(10);
    expect(drawing.svg.split('stroke-width="1.5"').length - 1).toBe(3);
  });

  it('draws a bar instead of more than twenty dots, as long as the share that is right', () => {
    const drawing = card(line(10, 40));
    const [, frame, filled] = rects(drawing);
    expect(circles(drawing)).toEqual([]);
    expect((filled?.width ?? 0) / ((frame?.width ?? 0) + 1.5)).toBeCloseTo(0.25);
  });

  it('writes no score for a part that was not done: missing is never nought', () => {
    const contents = textBoxes(card({ label: 'clock', right: 0, asked: 0, note: 'not today' })).map(
      ({ content }) => content,
    );
    expect(contents).toEqual(['Wren', 'clock', 'not today']);
    expect(textBoxes(card(line(0, 10))).map(({ content }) => content)).toContain('0 of 10');
  });

  it('shows at most three cards to say again, each with its answer', () => {
    const sayAgain = run(1, 1, 5).map((n) => ({
      face: written(`double ${n}`),
      answer: String(2 * n),
    }));
    const drawing = resultCard({ title: '', lines: [], sayAgain, footer: '' });
    expect(textBoxes(drawing).map(({ content }) => content)).toEqual([
      'Say again at breakfast',
      'double 1',
      '2',
      'double 2',
      '4',
      'double 3',
      '6',
    ]);
  });

  it('draws a clock to say again as a clock', () => {
    const sayAgain = [{ face: clock(3, 30), answer: 'half past three' }];
    const drawing = resultCard({ title: '', lines: [], sayAgain, footer: '' });
    expect(circles(drawing).some(({ r }) => r > 40)).toBe(true);
    expect(drawing.svg).toContain('half past three');
  });

  it('cuts no time of day and no number word to say again, in any language', () => {
    const phrases = Object.keys(LANGUAGES)
      .filter(isLanguage)
      .flatMap((language) =>
        run(0, 1, 144).map((i) => clockPhrase(Math.floor(i / 12) + 1, 5 * (i % 12), language)),
      );
    for (const phrase of new Set(phrases)) {
      const cards = LONG_WORDS.slice(0, 3).map((word) => ({ face: written(word), answer: phrase }));
      const drawing = resultCard({ title: '', lines: [], sayAgain: cards, footer: '' });
      expect(drawing.svg, phrase).not.toContain('…');
    }
  });

  it('has no heading for breakfast when there is nothing to say again', () => {
    expect(card(line(10, 10)).svg).not.toContain('breakfast');
  });

  it('is refused when more are right than asked', () => {
    expect(() => card(line(11, 10))).toThrow(RangeError);
    expect(() => card(line(-1, 10))).toThrow(RangeError);
  });
});
