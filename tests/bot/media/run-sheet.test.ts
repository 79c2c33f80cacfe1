import { describe, expect, it } from 'vitest';
import { PALETTE, pictureWords, runAnswerSheet, runSheet } from '../../../bot/media/index.ts';
import { countBy, startAt } from '../../../bot/media/words.ts';
import { run } from './faces.ts';
import { textBoxes } from './text-boxes.ts';

const sheet = (numbers: readonly number[], limit = 200) => runSheet({ title: '', numbers, limit });
const answers = (numbers: readonly number[], limit = 200) =>
  runAnswerSheet({ title: '', numbers, limit });
const contents = (drawing: ReturnType<typeof sheet>) =>
  textBoxes(drawing).map(({ content }) => content);

/** The numbers on the square, the legend's left out, in rising order. */
function shown(drawing: ReturnType<typeof sheet>): number[] {
  const numbers = contents(drawing).flatMap((each) => (/^\d+$/.test(each) ? [Number(each)] : []));
  return [...new Set(numbers)].sort((a, b) => a - b);
}

/** Numbers written in bold: marked ones. */
function marked(drawing: ReturnType<typeof sheet>): number[] {
  const bold = drawing.svg.matchAll(/font-weight="700"[^>]*>(\d+)</g);
  return [...new Set([...bold].map(([, number]) => Number(number)))].sort((a, b) => a - b);
}

describe('runSheet', () => {
  it('says where to start and how to go on', () => {
    expect(sheet([35, 40, 45]).svg).toContain('Count on in fives.');
    expect(contents(sheet([35, 40, 45])).slice(0, 2)).toEqual([
      'Start at 35.',
      'Count on in fives.',
    ]);
    expect(contents(sheet([131, 130]))).toContain('Count back in ones.');
    expect(contents(sheet([7, 14]))).toContain('Count on in 7s.');
  });

  it('names the steps it knows and writes the others as numerals', () => {
    expect(startAt(35)).toBe('Start at 35.');
    expect(countBy(-10)).toBe('Count back in tens.');
    expect(pictureWords().count(-1)).toBe('Count back in ones.');
    expect(pictureWords().count(7)).toBe('Count on in 7s.');
    expect([2, 5, 10].map(pictureWords().count)).toEqual([
      'Count on in twos.',
      'Count on in fives.',
      'Count on in tens.',
    ]);
  });

  it('says only where to start when there is one number', () => {
    expect(contents(sheet([7])).slice(0, 2)).toEqual(['Start at 7.', '1']);
  });

  it('marks the start and not one of the answers', () => {
    for (const numbers of [run(35, 5, 15), run(131, -1, 20), run(20, -1, 21), run(10, 10, 20)]) {
      expect(marked(sheet(numbers))).toEqual(numbers.slice(0, 1));
    }
    expect(sheet(run(35, 5, 15)).svg).not.toContain(PALETTE.tint);
  });

  it('looks the same however far the run goes on within its hundreds', () => {
    expect(sheet(run(35, 5, 3)).svg).toBe(sheet(run(35, 5, 13)).svg);
  });

  it('shows the whole hundreds the run crosses', () => {
    expect(shown(sheet([35, 40, 45, 50]))).toEqual(run(1, 1, 100));
    expect(shown(sheet(run(131, -1, 20)))).toEqual(run(101, 1, 100));
    expect(shown(sheet(run(10, 10, 20)))).toEqual(run(1, 1, 200));
  });

  it('stops at the limit', () => {
    expect(shown(sheet([112, 113], 115))).toEqual(run(101, 1, 15));
  });

  it('shows nought one step before one', () => {
    const boxes = textBoxes(sheet([2, 1, 0]));
    const find = (content: string) => boxes.find((box) => box.content === content);
    expect(find('0')?.bottom).toBeLessThan(find('10')?.top ?? Number.NaN);
    expect(find('0')?.left).toBeGreaterThan(find('9')?.right ?? Number.NaN);
  });

  it('says which cell is the start', () => {
    expect(contents(sheet([35, 40])).slice(-2)).toEqual(['35', 'start']);
  });

  it('is refused without numbers, with uneven steps, and outside nought to the limit', () => {
    for (const numbers of [[], [1, 2, 4], [5, 5], [0.5], [-1, 0], [195, 200, 205]]) {
      expect(() => sheet(numbers)).toThrow(RangeError);
      expect(() => answers(numbers)).toThrow(RangeError);
    }
  });
});

describe('runAnswerSheet', () => {
  it('marks exactly the numbers to say, in bold and with a border', () => {
    expect(marked(answers(run(35, 5, 15)))).toEqual(run(35, 5, 15));
    expect(marked(answers(run(131, -1, 20)))).toEqual(run(112, 1, 20));
    const borders = answers([35, 40, 45]).svg.split(`stroke="${PALETTE.accent}" stroke-width="2"`);
    // Two numbers to say, and one of them once more in the legend.
    expect(borders.length - 1).toBe(3);
  });

  it('explains both marks', () => {
    expect(contents(answers([35, 40, 45])).slice(-4)).toEqual(['35', 'start', '40', 'to say']);
    expect(answers([35, 40, 45]).svg).toContain('to say');
  });

  it('marks only the start of a run of one', () => {
    expect(answers([7]).svg).toBe(sheet([7]).svg);
  });
});
