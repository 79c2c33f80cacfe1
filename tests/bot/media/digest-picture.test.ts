import { describe, expect, it } from 'vitest';
import { dayMark } from '../../../bot/media/day-mark.ts';
import { digestColumns } from '../../../bot/media/digest-columns.ts';
import { type DayState, type DigestRow, digestPicture } from '../../../bot/media/index.ts';
import { MAX_CHILDREN } from '../../../db/index.ts';
import { sampleDigest } from './samples.ts';
import { textBoxes } from './text-boxes.ts';

const wren: DigestRow = {
  number: 1,
  name: 'Wren',
  days: ['practised'],
  strands: [{ right: 9, asked: 10 }],
};
const picture = (rows: readonly DigestRow[]) =>
  digestPicture({
    title: 'Kingfisher',
    subtitle: '',
    dayLabels: ['Mon'],
    strandLabels: ['clock'],
    footer: '',
    rows,
  });
const contents = (rows: readonly DigestRow[]) =>
  textBoxes(picture(rows)).map(({ content }) => content);

describe('digestPicture', () => {
  it('writes roster number, name and score of each child', () => {
    expect(picture([wren]).svg).toContain('9/10');
    expect(contents([wren]).slice(0, 6)).toEqual([
      'Kingfisher',
      'Mon',
      'clock',
      '1',
      'Wren',
      '9/10',
    ]);
  });

  it('writes no score for a strand not asked, and nought of ten for nought of ten', () => {
    expect(contents([{ ...wren, strands: [null] }]).filter((each) => each.includes('/'))).toEqual(
      [],
    );
    expect(
      contents([{ ...wren, strands: [{ right: 0, asked: 0 }] }]).filter((each) =>
        each.includes('/'),
      ),
    ).toEqual([]);
    expect(contents([{ ...wren, strands: [{ right: 0, asked: 10 }] }])).toContain('0/10');
  });

  it('leaves the roster number to stand for a name the font cannot draw', () => {
    const row = { ...wren, number: 7, name: 'שרה-לאה' };
    expect(contents([row]).slice(3, 5)).toEqual(['7', '9/10']);
  });

  it('ellipsises a name that is too long', () => {
    const drawn = textBoxes(sampleDigest(3, 5, 6)).filter(({ content }) =>
      content.startsWith('Tamarind'),
    );
    expect(drawn).toHaveLength(1);
    expect(drawn[0]?.content).toMatch(/…$/);
  });

  it('explains every mark below the rows', () => {
    expect(contents([wren]).slice(-5)).toEqual([
      'practised',
      'not today',
      'no answer',
      'not delivered',
      'not asked yet',
    ]);
  });

  it('carries the caution it is given', () => {
    const words = textBoxes(sampleDigest(1, 1, 1))
      .map(({ content }) => content)
      .join(' ');
    expect(words).toContain('A few cards a day are not a diagnosis.');
  });

  it('is refused without rows or days, and with too many rows', () => {
    expect(() => sampleDigest(0, 5, 6)).toThrow(RangeError);
    expect(() => sampleDigest(61, 5, 6)).toThrow(RangeError);
    expect(() => sampleDigest(1, 0, 6)).toThrow(RangeError);
  });

  it('holds the largest class there is', () => {
    expect(sampleDigest(MAX_CHILDREN, 5, 6).height).toBeGreaterThan(sampleDigest(59, 5, 6).height);
  });

  it('shows the days alone in a week in which nobody practised', () => {
    expect(sampleDigest(3, 5, 0).width).toBeLessThan(sampleDigest(3, 5, 6).width);
  });
});

describe('dayMark', () => {
  it('has another outline for each state, colours left out', () => {
    const states: readonly DayState[] = ['practised', 'not_today', 'silent', 'unsent', 'none'];
    const outlines = states.map((state) => dayMark(state, 20, 20).replace(/#[0-9a-f]{6}/g, ''));
    expect(new Set(outlines).size).toBe(5);
  });

  it('is blank when there was nothing to send', () => {
    expect(dayMark('none', 10, 10)).toBe('');
  });
});

describe('digestColumns', () => {
  it('never makes a picture narrower than 480', () => {
    expect(digestColumns({ numbers: [1], names: ['Wren'], days: 1, strands: 1 }).width).toBe(480);
  });

  it('keeps the last strand inside the picture', () => {
    const { strands, width } = digestColumns({
      numbers: [40],
      names: ['Juniper'],
      days: 7,
      strands: 6,
    });
    expect((strands.at(-1) ?? Number.NaN) + 34).toBeLessThanOrEqual(width - 16);
  });
});
