import { describe, expect, it } from 'vitest';
import { ENGLISH, PALETTE, runSheet } from '../../../bot/media/index.ts';
import { run } from './samples.ts';
import { textBoxes } from './text-boxes.ts';

const sheet = (numbers: readonly number[], limit = 200) => runSheet({ title: '', numbers, limit });
const contents = (numbers: readonly number[], limit = 200) =>
  textBoxes(sheet(numbers, limit)).map(({ content }) => content);

/** Numbers written in bold on the square: the path. */
function marked(numbers: readonly number[]): number[] {
  const bold = sheet(numbers).svg.matchAll(/font-weight="700"[^>]*>(\d+)</g);
  return [...bold].map(([, number]) => Number(number)).sort((a, b) => a - b);
}

describe('runSheet', () => {
  it('says where to start and how to go on', () => {
    expect(sheet([35, 40, 45]).svg).toContain('Count on in fives.');
    expect(contents([35, 40, 45]).slice(0, 2)).toEqual(['Start at 35.', 'Count on in fives.']);
    expect(contents([131, 130])).toContain('Count back in ones.');
    expect(contents([7, 14])).toContain('Count on in 7s.');
  });

  it('names the steps it knows and writes the others as numerals', () => {
    expect(ENGLISH.count(-1)).toBe('Count back in ones.');
    expect(ENGLISH.count(7)).toBe('Count on in 7s.');
    expect([2, 5, 10].map(ENGLISH.count)).toEqual([
      'Count on in twos.',
      'Count on in fives.',
      'Count on in tens.',
    ]);
  });

  it('says only where to start when there is one number', () => {
    expect(contents([7]).slice(0, 2)).toEqual(['Start at 7.', '1']);
  });

  it('shows the rows of ten that the run passes through, and no more', () => {
    const shown = contents([35, 40, 45, 50]).flatMap((each) =>
      /^\d+$/.test(each) ? [Number(each)] : [],
    );
    expect(shown.sort((a, b) => a - b)).toEqual(run(31, 1, 20));
  });

  it('shows 1 to 200 for tens to 200', () => {
    expect(contents(run(10, 10, 20)).filter((each) => /^\d+$/.test(each))).toHaveLength(200);
  });

  it('stops at the limit', () => {
    expect(
      contents([112, 113], 115)
        .filter((each) => /^\d+$/.test(each))
        .sort(),
    ).toEqual(run(111, 1, 5).map(String));
  });

  it('marks exactly the numbers to say, in bold and with a border', () => {
    expect(marked(run(35, 5, 15))).toEqual(run(35, 5, 15));
    expect(marked(run(131, -1, 20))).toEqual(run(112, 1, 20));
    const borders =
      sheet([35, 40, 45]).svg.split(`stroke="${PALETTE.accent}" stroke-width="2"`).length - 1;
    expect(borders).toBe(2);
  });

  it('labels the start above the square when counting on and below it when counting back', () => {
    const start = (numbers: readonly number[]) => {
      const boxes = textBoxes(sheet(numbers));
      const top = (content: string) =>
        boxes.find((box) => box.content === content)?.top ?? Number.NaN;
      return top('start') - top(String(numbers[0]));
    };
    expect(start([35, 40, 45, 50, 55])).toBeLessThan(0);
    expect(start(run(131, -1, 20))).toBeGreaterThan(0);
  });

  it('shows nought one step before one', () => {
    const boxes = textBoxes(sheet([2, 1, 0]));
    const find = (content: string) => boxes.find((box) => box.content === content);
    expect(find('0')?.bottom).toBeLessThan(find('10')?.top ?? Number.NaN);
  });

  it('is refused without numbers, with uneven steps, and outside nought to the limit', () => {
    for (const numbers of [[], [1, 2, 4], [5, 5], [0.5], [-1, 0], [195, 200, 205]]) {
      expect(() => sheet(numbers)).toThrow(RangeError);
    }
  });
});
