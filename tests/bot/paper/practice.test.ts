import { describe, expect, it } from 'vitest';
import { type PracticeInput, practicePages } from '../../../bot/paper/index.ts';
import { PAPER_WORDS } from '../../../bot/texts/paper.ts';
import { type CardFace, isLanguage, LANGUAGES } from '../../../drills/index.ts';
import { wordsOf } from './open-pdf.ts';
import { cardsOf, clockCard, days, HARD_NAMES, runCard } from './samples.ts';
import { expectApart, expectWithinEdges, printed } from './within.ts';

const TAGS = Object.keys(LANGUAGES).filter(isLanguage);

const input = (change: Partial<PracticeInput> = {}): PracticeInput => ({
  sheets: [
    {
      child: { number: 4, nickname: 'Wren' },
      days: days(5),
      workbook: { title: 'Pebble Path', page: 14 },
    },
  ],
  right: 'Kingfisher class · Mon 14 Sept to Fri 18 Sept',
  paper: 'a4',
  words: PAPER_WORDS.en,
  ...change,
});

const allWords = async (change?: Partial<PracticeInput>) =>
  (await printed(practicePages(input(change)))).map(wordsOf).join('\n');

describe('a practice sheet', () => {
  it('has every day with a box for each part’s score, a line for pages and one for the adult', async () => {
    const words = await allWords();
    for (const day of ['Mon 14 Sept', 'Tue 15 Sept', 'Wed 16 Sept', 'Thu 17 Sept', 'Fri 18 Sept']) {
      expect(words).toContain(day);
    }
    expect(words.match(/(?<!half )of 10\b/g)).toHaveLength(10);
    expect(words.match(/Workbook pages done/g)).toHaveLength(5);
    expect(words.match(/Adult/g)).toHaveLength(5);
    expect(words.match(/Pebble Path · from page 14/g)).toHaveLength(1);
  });

  it('of a usual week takes both sides of one leaf, each with the child’s name', async () => {
    const pages = await printed(practicePages(input()));
    expect(pages).toHaveLength(2);
    for (const page of pages) expect(wordsOf(page)).toContain('4 · Wren');
  });

  it('without a workbook asks for no pages', async () => {
    const sheets = [{ child: null, days: days(1), workbook: null }];
    expect(await allWords({ sheets })).not.toMatch(/pages done|Pebble/);
  });

  it('names the workbook without a page where no child is known', async () => {
    const sheets = [{ child: null, days: days(1), workbook: { title: 'Pebble Path', page: null } }];
    const words = await allWords({ sheets });
    expect(words).toContain('Pebble Path');
    expect(words).not.toContain('from page');
  });

  it('without a child has a line for the name and no child’s name', async () => {
    const words = await allWords({ sheets: [{ child: null, days: days(1), workbook: null }] });
    expect(words).toMatch(/Name _{20}/);
    expect(words).not.toContain('Wren');
  });

  it('begins on a page of its own for each child, with nobody else on it', async () => {
    const names = ['Wren', 'Otter', 'Robin'];
    const sheets = names.map((nickname, i) => ({
      child: { number: i + 1, nickname },
      days: days(1),
      workbook: null,
    }));
    const pages = (await printed(practicePages(input({ sheets })))).map(wordsOf);
    expect(pages).toHaveLength(3);
    for (const [i, page] of pages.entries()) {
      expect(names.filter((name) => page.includes(name))).toEqual([names[i]]);
    }
  });

  it('compares nobody: no best, no rank, no percent', async () => {
    expect(await allWords()).not.toMatch(/best|rank|%|better|class average/i);
  });

  it.each(TAGS)('stays on the paper in %s, on both papers, with hard names', async (tag) => {
    const sheets = HARD_NAMES.map((nickname, i) => ({
      child: { number: i + 1, nickname },
      days: days(1),
      workbook: { title: `${nickname} Pebble Path `.repeat(3), page: 998 },
    }));
    for (const paper of ['a4', 'letter'] as const) {
      for (const page of await printed(
        practicePages(input({ sheets, paper, words: PAPER_WORDS[tag] })),
      )) {
        expectWithinEdges(page);
        expectApart(page);
      }
    }
  });
});

describe('a practice sheet without days', () => {
  it('is refused without a sheet or a day', () => {
    expect(() => practicePages(input({ sheets: [] }))).toThrow('at least one school day');
    const sheets = [{ child: null, days: [], workbook: null }];
    expect(() => practicePages(input({ sheets }))).toThrow(RangeError);
  });
});

describe('a practice sheet of the largest plan', () => {
  it('breaks days between parts and loses no card', async () => {
    const part = (title: string, faces: readonly CardFace[]) => ({
      title,
      faces,
      asked: faces.length,
    });
    const clocks = Array.from({ length: 20 }, (_, i) => clockCard(1 + (i % 12), (i * 5) % 60).face);
    const sums = cardsOf('bonds.to20', 20).map(({ face }) => face);
    const tasks = [
      part('clock, to five minutes', clocks),
      part('adding within 20', sums),
      part('clock, to the quarter', clocks),
      part('clock, to the half hour', clocks),
      part('halves', sums),
      { title: 'counting in fives', faces: [runCard(20).face], asked: 20 },
    ];
    const sheet = {
      child: null,
      workbook: null,
      days: [
        { label: 'Mon 14 Sept', tasks },
        { label: 'Tue 15 Sept', tasks },
      ],
    };
    const pages = await printed(practicePages(input({ sheets: [sheet] })));
    expect(pages.length).toBeGreaterThan(2);
    const words = pages.map(wordsOf).join(' ');
    expect(words.match(/of 20/g)).toHaveLength(12);
    expect(words.match(/\d \+ \d/g)).toHaveLength(80);
    for (const page of pages) expectWithinEdges(page);
  });
});
