import { describe, expect, it } from 'vitest';
import { type AnswerSheetInput, answerSheet } from '../../../bot/media/index.ts';
import { clock, LONG_WORDS, run, written } from './faces.ts';
import { circles, textBoxes } from './text-boxes.ts';

const sheet = (items: AnswerSheetInput['items'], miniClocks = false) =>
  answerSheet({ title: '', items, miniClocks });
const contents = (...input: Parameters<typeof sheet>) =>
  textBoxes(sheet(...input)).map(({ content }) => content);
const doubles = run(1, 1, 8).map((n) => ({ face: written(`double ${n}`), answer: String(2 * n) }));
const clocks = run(1, 1, 4).map((hour) => ({ face: clock(hour, 30), answer: 'half past' }));

describe('answerSheet', () => {
  it('is as wide as a phone', () => {
    const items = [{ face: written('double 7'), answer: '14' }];
    expect(answerSheet({ title: 'Doubles', items }).width).toBe(360);
  });

  it('gives each card its number and its answer', () => {
    expect(contents(doubles.slice(0, 2))).toEqual(['1', 'double 1', '2', '2', 'double 2', '4']);
  });

  it('reads down the first column and then down the second', () => {
    const boxes = textBoxes(sheet(doubles));
    const at = (content: string) => boxes.find((box) => box.content === content);
    expect(at('double 5')?.left).toBeGreaterThan(at('double 4')?.right ?? Number.NaN);
    expect(at('double 5')?.top).toBe(at('double 1')?.top);
  });

  it('stands in one column when a card is too long for two', () => {
    const long = [...doubles, { face: written(LONG_WORDS[0]), answer: '777' }];
    const lefts = textBoxes(sheet(long)).flatMap(({ content, left }) =>
      content.startsWith('double') ? [left] : [],
    );
    expect(new Set(lefts).size).toBe(1);
  });

  it('cuts no number word', () => {
    const drawn = contents(LONG_WORDS.map((word) => ({ face: written(word), answer: '777' })));
    expect(drawn.filter((each) => each.includes('…'))).toEqual([]);
  });

  it('writes a clock as its phrase, and draws it only when asked to', () => {
    expect(contents(clocks.slice(0, 1))).toEqual(['1', 'half past']);
    expect(circles(sheet(clocks)).filter(({ r }) => r > 20)).toHaveLength(0);
    expect(circles(sheet(clocks, true)).filter(({ r }) => r > 20)).toHaveLength(4);
  });

  it('is refused without cards', () => {
    expect(() => sheet([])).toThrow(RangeError);
  });
});
