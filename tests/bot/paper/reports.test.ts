import { describe, expect, it } from 'vitest';
import { reportPages } from '../../../bot/paper/index.ts';
import { paragraph } from '../../../bot/paper/paragraph.ts';
import { smallBars } from '../../../bot/paper/small-bars.ts';
import { REPORT_WORDS } from '../../../bot/texts/report.ts';
import { wordsOf } from './open-pdf.ts';
import { HARD_NAMES } from './samples.ts';
import { twoReports } from './week-samples.ts';
import { expectApart, expectWithinEdges, printed } from './within.ts';

describe('a report on paper', () => {
  it.each(['a4', 'letter'] as const)(
    'on %s has each child on pages of its own, within the edges and apart',
    async (paper) => {
      const pages = await printed(twoReports(paper));
      expect(pages).toHaveLength(2);
      for (const page of pages) {
        expectWithinEdges(page);
        expectApart(page);
      }
      const [wren = '', otter = ''] = pages.map(wordsOf);
      expect(wren).not.toContain('Otter');
      expect(otter).not.toContain('Wren');
    },
  );

  it('says the same as the words it is given, with the date and whose word it is', async () => {
    const [page] = await printed(twoReports());
    const words = page ? wordsOf(page) : '';
    for (const part of [
      '4 · Wren',
      'Kingfisher class',
      'practised mental maths at home on 11 of 15 school days',
      'Needs more time: adding across 10.',
      'Small next steps',
      'What this page does not say',
      'Made on 18 September 2026 from what the family marked at home.',
    ]) {
      expect(words).toContain(part);
    }
  });

  it('draws a dot for each evening practised and none for one that was not', () => {
    const [first, second] = twoReports();
    const dots = (svg = '') => svg.match(/r="3.4"/g)?.length ?? 0;
    expect([dots(first?.svg), dots(second?.svg)]).toEqual([11, 0]);
  });

  it('calls a child whose name the font lacks by its number, and its sentences have no hole', async () => {
    const [page] = await printed(twoReports('a4', [HARD_NAMES[2], 'Otter']));
    const words = page ? wordsOf(page) : '';
    expect(words).toContain('4 · child 4');
    expect(words).toContain('This child practised mental maths');
  });

  it('of many strands goes on to a second page without breaking a strand', async () => {
    const pages = await printed(longReport());
    expect(pages).toHaveLength(2);
    for (const page of pages) {
      expectApart(page);
      const titles = page.texts.filter(({ text }) => text === 'Doubles').length;
      expect(page.texts.filter(({ text }) => text.startsWith('Knows')).length).toBe(titles);
    }
  });

  it('of nobody is refused', () => {
    const none = {
      reports: [],
      right: '',
      footer: '',
      headings: REPORT_WORDS,
      paper: 'a4',
    } as const;
    expect(() => reportPages(none)).toThrow('at least one child');
  });
});

describe('small bars', () => {
  const place = { x: 0, y: 0, width: 100, height: 40 };
  const heights = (svg: string) =>
    [...svg.matchAll(/<rect[^>]* height="([\d.]+)"/g)].map((m) => Number(m[1]));

  it('are as high as the share right; a share of nought keeps a sliver', () => {
    const svg = smallBars(
      [
        { right: 5, asked: 10 },
        { right: 0, asked: 10 },
      ],
      place,
    );
    // The border lies inside the edge.
    expect(heights(svg).map((height) => height + 0.75)).toEqual([20, 1.5]);
  });

  it('leave a week without marks without a bar: it is missing and never nought', () => {
    expect(heights(smallBars([null, { right: 0, asked: 0 }], place))).toEqual([]);
  });

  it('refuse more right than asked', () => {
    expect(() => smallBars([{ right: 2, asked: 1 }], place)).toThrow(RangeError);
  });
});

it('a paragraph of no words is nothing high, as its docstring says', () => {
  expect(paragraph('', { x: 0, width: 100, size: 10 }).height).toBe(0);
});

/** A report of more strands than a page holds. */
function longReport() {
  const strand = { title: 'Doubles', sentences: ['Knows this well: doubles.'], weeks: [] };
  const long = {
    number: 1,
    nickname: 'Wren',
    lead: 'Wren practised.',
    under: '',
    practised: 60,
    weekLabels: ['3 Aug', '14 Sept'] as const,
    strands: Array.from({ length: 14 }, () => strand),
    steps: ['Go on.'],
    notSaid: ['No test.'],
  };
  const input = {
    reports: [long],
    right: '',
    footer: '',
    headings: REPORT_WORDS,
    paper: 'a4',
  } as const;
  return reportPages(input);
}
