import { describe, expect, it } from 'vitest';
import { digestPages } from '../../../bot/digest/digest-pages.ts';
import { readIn } from '../../../bot/language/index.ts';
import { summaryOf, week } from '../support/kingfisher.ts';
import { wordsOf } from './open-pdf.ts';
import { HARD_NAMES } from './samples.ts';
import { fullWeek, weekPaper } from './week-samples.ts';
import { expectApart, expectWithinEdges, printed } from './within.ts';

describe('a week on paper', () => {
  it.each([
    [1, 'a4'],
    [24, 'a4'],
    [40, 'letter'],
    [60, 'letter'],
  ] as const)(
    'of %d children is one page of %s with everything within its edges and apart',
    async (children, paper) => {
      const pages = await printed(weekPaper(children, paper));
      expect(pages).toHaveLength(1);
      for (const page of pages) {
        expectWithinEdges(page);
        expectApart(page);
      }
    },
  );

  it.each(['af', 'es', 'de', 'fr'] as const)('has room for its words in "%s"', async (language) => {
    const [page] = await printed(readIn(language, () => weekPaper(24)));
    if (!page) throw new Error('no page');
    expectWithinEdges(page);
    expectApart(page);
  });

  it('names every child, with the roster number alone where the font lacks the name', async () => {
    const [page] = await printed(weekPaper(24));
    const words = page ? wordsOf(page) : '';
    for (const name of ['Finch', 'Ziggy', 'Ace']) expect(words).toContain(name);
    expect(words).not.toContain(HARD_NAMES[2]);
    expect(words).toContain('Wwwww');
    for (let number = 1; number <= 24; number += 1) expect(words).toContain(` ${number} `);
  });

  it('begins with the answer, and ends with what a score is not', async () => {
    const [page] = await printed(weekPaper(24));
    const words = page ? wordsOf(page) : '';
    expect(words).toContain('practised on three days or more; ready to move up: halves');
    for (const heading of ['By strand', 'Facts to look at', 'Proposals', 'Families to call']) {
      expect(words).toContain(heading);
    }
    expect(words.endsWith('A score is not a diagnosis.')).toBe(true);
  });

  it('writes the share right where there is enough to speak of one, and right of asked where there is not', async () => {
    const { children } = fullWeek(3);
    expect(children[0]?.standings.get('halves')).toBe('secure');
    const [page] = await printed(weekPaper(3));
    const texts = page?.texts.map(({ text }) => text) ?? [];
    expect(texts).toContain('100');
    expect(texts).toContain('75');
  });

  it('in which nobody practised is a page all the same, without a nought', async () => {
    const summary = summaryOf([week(1, 'Wren', { evenings: [] })]);
    const input = { title: 'Kingfisher class', summary, steps: null, paper: 'a4' } as const;
    const [page] = await printed(digestPages(input));
    const words = page ? wordsOf(page) : '';
    expect(words).toContain('Nobody has practised in these days');
    expect(words).not.toMatch(/\b0 of (?!1 practised)/);
  });

  it('says that words were left out where a big class leaves them no room', async () => {
    const [page] = await printed(weekPaper(60));
    expect(page?.texts.filter(({ text }) => text === '…').length).toBeGreaterThan(0);
  });
});
