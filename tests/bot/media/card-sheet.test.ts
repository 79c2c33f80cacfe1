import { describe, expect, it } from 'vitest';
import { cardSheet } from '../../../bot/media/index.ts';
import { clock, run, written } from './samples.ts';
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
      '7 + ? = 10',
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
