import { describe, expect, it } from 'vitest';
import {
  PALETTE,
  type ProgressInput,
  progressPicture,
  trendPicture,
} from '../../../bot/media/index.ts';
import { sheetFooter } from '../../../bot/media/sheet-footer.ts';
import { run } from './faces.ts';
import { circles, rects, textBoxes } from './text-boxes.ts';

const term = (given: Partial<ProgressInput> = {}) =>
  progressPicture({
    title: 'Wren',
    evenings: 23,
    weekLabels: ['3 Nov', '10 Nov', '17 Nov'],
    strands: [],
    footer: '',
    ...given,
  });
const halves = (weeks: ProgressInput['strands'][number]['weeks']) =>
  term({ strands: [{ label: 'halves', weeks }] });
const contents = (drawing: ReturnType<typeof term>) =>
  textBoxes(drawing).map(({ content }) => content);
const bars = (drawing: ReturnType<typeof term>) => rects(drawing).slice(1);

describe('progressPicture', () => {
  it('draws a dot for each evening practised and no empty place for any other', () => {
    expect(term().svg).toContain('23 evenings');
    expect(circles(term())).toHaveLength(23);
    expect(
      new Set([...term().svg.matchAll(/<circle[^>]*fill="([^"]*)"/g)].map(([, c]) => c)),
    ).toEqual(new Set([PALETTE.accent]));
  });

  it('only ever grows: an evening more is a dot more and changes no other', () => {
    const [before, after] = [circles(term()), circles(term({ evenings: 24 }))];
    expect(after.slice(0, 23)).toEqual(before);
  });

  it('says so kindly when there is none yet', () => {
    expect(contents(term({ evenings: 0 }))).toEqual(['Wren', 'No evening yet this term']);
    expect(contents(term({ evenings: 1 }))[1]).toBe('1 evening this term');
  });

  it('writes the latest score and draws a bar for each week asked', () => {
    const drawing = halves([{ right: 5, asked: 10 }, null, { right: 9, asked: 10 }]);
    expect(contents(drawing)).toContain('9 of 10');
    expect(bars(drawing)).toHaveLength(2);
    const [first, last] = bars(drawing);
    expect((last?.height ?? 0) / (first?.height ?? 1)).toBeCloseTo(9 / 5, 1);
  });

  it('tells nought from a week not asked', () => {
    expect(bars(halves([{ right: 0, asked: 10 }, null, null]))).toHaveLength(1);
    expect(contents(halves([null, null, { right: 0, asked: 0 }]))).not.toContain('0 of 0');
  });

  it('labels the weeks, and only the first and last when they do not all fit', () => {
    expect(contents(halves([null, null, null])).slice(-3)).toEqual(['3 Nov', '10 Nov', '17 Nov']);
    const many = run(1, 1, 12).map((week) => `week ${week}`);
    const drawing = term({
      weekLabels: many,
      strands: [{ label: 'halves', weeks: many.map(() => null) }],
    });
    expect(contents(drawing).slice(-2)).toEqual(['week 1', 'week 12']);
  });

  it('is refused for evenings that cannot be, weeks that do not match, and scores that cannot be', () => {
    for (const evenings of [-1, 0.5, 401, Number.NaN]) {
      expect(() => term({ evenings })).toThrow(RangeError);
    }
    expect(() => term({ weekLabels: [] })).toThrow(RangeError);
    expect(() => term({ weekLabels: Array(13).fill('3 Nov') })).toThrow(RangeError);
    expect(() => halves([null])).toThrow(RangeError);
    expect(() => halves([{ right: 11, asked: 10 }, null, null])).toThrow(RangeError);
    expect(() => halves([{ right: -1, asked: 10 }, null, null])).toThrow(RangeError);
  });
});

describe('trendPicture', () => {
  const trend = (weeks: ProgressInput['strands'][number]['weeks']) =>
    trendPicture({
      title: '',
      weekLabels: weeks.map((_, i) => `${i + 3} Nov`),
      strands: [{ label: 'halves', weeks }],
      footer: '',
    });

  it('writes the latest share and not the number of cards', () => {
    expect(trend([{ right: 8, asked: 10 }]).svg).toContain('80%');
    expect(
      contents(
        trend([
          { right: 8, asked: 10 },
          { right: 2, asked: 3 },
        ]),
      ),
    ).toContain('67%');
  });

  it('is refused without weeks', () => {
    expect(() => trend([])).toThrow(RangeError);
  });
});

describe('sheetFooter', () => {
  it('takes no room when it is empty', () => {
    expect(sheetFooter('', 100).bottom).toBe(100);
  });
});
