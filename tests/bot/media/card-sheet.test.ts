import { describe, expect, it } from 'vitest';
import { cardSheet } from '../../../bot/media/index.ts';
import { clock, LONG_WORDS, run, written } from './faces.ts';
import { circles, textBoxes } from './text-boxes.ts';

const contents = (input: Parameters<typeof cardSheet>[0]) =>
  textBoxes(cardSheet(input)).map(({ content }) => content);

describe('cardSheet', () => {
  it('is as wide as a phone', () => {
    expect(cardSheet({ title: 'Doubles', faces: [written('double 7')] }).width).toBe(360);
  });

  it('numbers the cards in the order given and writes nothing else: never an answer', () => {
    const faces = ['9 − 4', 'double 7', 'half of 14', '7 + ? = 10'].map(written);
    expect(contents({ title: 'Mixed', faces })).toEqual([
      'Mixed',
      '9 − 4',
      '1',
      'double 7',
      '2',
      'half of 14',
      '3',
      '7 +',
      '= 10',
      '4',
    ]);
  });

  it('reads across: the second card stands beside the first', () => {
    const boxes = textBoxes(
      cardSheet({ title: '', faces: run(0, 1, 4).map((n) => written(`${n} + 1`)) }),
    );
    const find = (content: string) => boxes.find((box) => box.content === content);
    expect(find('1 + 1')?.top).toBe(find('0 + 1')?.top);
    expect(find('1 + 1')?.left).toBeGreaterThan(find('0 + 1')?.right ?? Number.NaN);
  });

  it('sets all sums of a sheet at one size', () => {
    const boxes = textBoxes(
      cardSheet({ title: '', faces: ['1 + 1', '17 + ? = 20', '9 − 4', '2 + 2'].map(written) }),
    );
    const sizes = boxes.filter(({ content }) => /[+−]/.test(content)).map(({ size }) => size);
    expect(sizes).toHaveLength(4);
    expect(new Set(sizes).size).toBe(1);
  });

  it('gives long number words the whole width rather than cut one or set it small', () => {
    for (const word of LONG_WORDS) {
      const drawn = textBoxes(
        cardSheet({ title: '', faces: run(1, 1, 5).map(() => written(word)) }),
      );
      const lines = drawn.filter(({ content }) => /\p{Letter}/u.test(content));
      const letters = (text: string) => text.replace(/[\s-]/g, '');
      expect(letters(lines.map(({ content }) => content).join(''))).toBe(letters(word.repeat(5)));
      expect(Math.min(...lines.map(({ size }) => size))).toBeGreaterThanOrEqual(17);
    }
  });

  it('does not let one long word make the sums beside it small', () => {
    const alone = cardSheet({ title: '', faces: run(1, 1, 5).map(() => written('3 + 4')) });
    const mixed = cardSheet({
      title: '',
      faces: [clock(3, 30), ...run(1, 1, 5).map(() => written('3 + 4')), written(LONG_WORDS[0])],
    });
    const size = (drawing: typeof alone) =>
      textBoxes(drawing).find(({ content }) => content === '3 + 4')?.size;
    expect(size(mixed)).toBe(size(alone));
  });

  it('draws a face for every clock, in three columns when there are more than six', () => {
    const faces = (count: number) =>
      circles(
        cardSheet({ title: '', faces: run(1, 1, count).map((hour) => clock(hour, 30)) }),
      ).filter(({ r }) => r > 30);
    expect(faces(12)).toHaveLength(12);
    expect(new Set(faces(12).map(({ cx }) => cx)).size).toBe(3);
    expect(new Set(faces(6).map(({ cx }) => cx)).size).toBe(2);
  });

  it('never writes the time beside a clock', () => {
    const numerals = run(1, 1, 12).map(String);
    expect(contents({ title: '', faces: [clock(3, 30)] })).toEqual([...numerals, '1']);
  });

  it('is refused without cards', () => {
    expect(() => cardSheet({ title: 'None', faces: [] })).toThrow(RangeError);
  });
});
