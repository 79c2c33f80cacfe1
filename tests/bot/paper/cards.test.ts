import { describe, expect, it } from 'vitest';
import { answerPages, cardPages, type PaperCard } from '../../../bot/paper/index.ts';
import { PAPER_WORDS } from '../../../bot/texts/paper.ts';
import type { PrintedPage } from './open-pdf.ts';
import { wordsOf } from './open-pdf.ts';
import { cardsOf, clockCard, mixedCards, runCard } from './samples.ts';
import { expectApart, expectWithinEdges, printed } from './within.ts';

const SIZES = ['a4', 'letter'] as const;

/** Where each corner number stands on a page. */
function corners(page: PrintedPage): Map<number, { x: number; y: number }> {
  const found = page.texts.filter(
    ({ text, size }) => /^\d+$/.test(text) && Math.round(size) === 12,
  );
  return new Map(found.map(({ text, x, y }) => [Number(text), { x, y }]));
}

const answersOf = (cards: readonly PaperCard[]) =>
  answerPages({
    title: 'Kingfisher class',
    right: 'Mon 14 Sept',
    cards,
    paper: 'a4',
    words: PAPER_WORDS.en,
  });

describe.each(SIZES)('cards to cut out on %s', (paper) => {
  it.each([8, 10] as const)(
    '%i a page lie behind one another when the leaf is turned',
    async (perPage) => {
      const cards = cardsOf('bonds.to20', 20);
      const pages = await printed(cardPages({ cards, paper, perPage }));
      expect(pages).toHaveLength(2 * Math.ceil(cards.length / perPage));
      const sums = new Set<number>();
      let compared = 0;
      for (let leaf = 0; leaf < pages.length; leaf += 2) {
        const [front, back] = [pages[leaf], pages[leaf + 1]];
        if (!front || !back) throw new Error('a leaf has two sides');
        const fronts = corners(front);
        const backs = corners(back);
        expect([...backs.keys()].sort()).toEqual([...fronts.keys()].sort());
        for (const [number, { x, y }] of fronts) {
          const behind = backs.get(number);
          // A number stands as far from its card's left edge on both sides; the left column is behind the right one.
          const isLeft = x < front.width / 2;
          expect((behind?.x ?? 0) < front.width / 2).toBe(!isLeft);
          expect(behind?.y).toBeCloseTo(y, 1);
          sums.add(Math.round((behind?.x ?? 0) + x));
          compared += 1;
        }
      }
      expect(compared).toBe(20);
      // As far right of the middle in front as left of it behind: one sum for all.
      expect(sums.size).toBe(1);
    },
  );

  it('keep their text on the paper and apart, for 3 and for 20 cards of every kind', async () => {
    for (const cards of [
      mixedCards().slice(0, 3),
      [...mixedCards(), ...cardsOf('words.to100', 5)],
    ]) {
      for (const page of await printed(cardPages({ cards, paper, perPage: 10 }))) {
        expectWithinEdges(page);
        expectApart(page);
      }
    }
  });
});

describe('a card to cut out', () => {
  it('shows the question in front and the answer behind, never both on one side', async () => {
    const [front, back] = await printed(
      cardPages({ cards: cardsOf('halves.to20', 1), paper: 'a4' }),
    );
    expect(wordsOf(front as PrintedPage)).toBe('1 half of 2 halves of even numbers to 20');
    expect(wordsOf(back as PrintedPage)).toBe('1 1 halves of even numbers to 20');
  });

  it('with a clock has the time in words behind it and nowhere in front', async () => {
    const [front, back] = await printed(cardPages({ cards: [clockCard(7, 35)], paper: 'a4' }));
    expect(wordsOf(front as PrintedPage)).not.toContain('twenty-five');
    expect(wordsOf(back as PrintedPage).replaceAll(' ', '')).toContain('twenty-fivetoeight');
  });

  it.each([3, 20])('with a run of %i numbers has them all behind it', async (length) => {
    const [front, back] = await printed(cardPages({ cards: [runCard(length)], paper: 'a4' }));
    expect(wordsOf(front as PrintedPage)).toContain('Start at 35.');
    const said = wordsOf(back as PrintedPage)
      .match(/\d+/g)
      ?.map(Number);
    const numbers = Array.from({ length }, (_, i) => 35 + 5 * i);
    expect(said?.slice(1)).toEqual(numbers);
  });

  it('is refused when there is none', () => {
    expect(() => cardPages({ cards: [], paper: 'a4' })).toThrow('at least one card');
    expect(() => answersOf([])).toThrow('at least one card');
  });
});

describe('an answer sheet', () => {
  it('has each card’s number, question and answer on one line', async () => {
    const [page] = await printed(answersOf(mixedCards()));
    const y = page?.texts.find(({ text }) => text === 'half of 8')?.y ?? 0;
    const line = page?.texts.filter((each) => Math.abs(each.y - y) < 3).map(({ text }) => text);
    expect(line).toEqual(['8', 'half of 6', '3', '9', 'half of 8', '4']);
    expect(wordsOf(page as PrintedPage)).toContain('Kingfisher class · Answers');
    expect(wordsOf(page as PrintedPage)).toContain('35, 40, 45, 50, 55, 60, 65, 70, 75, 80');
  });

  it('numbers the cards as the cards to cut out are numbered', async () => {
    const cards = mixedCards();
    const [page] = await printed(answersOf(cards));
    const numbers = page?.texts
      .filter(({ text, size }) => /^\d+$/.test(text) && Math.round(size) === 10)
      .map(({ text }) => Number(text));
    expect(numbers).toEqual(cards.map((_, i) => i + 1));
  });

  it('goes on to further pages, numbered, and stays on the paper', async () => {
    const clocks = Array.from({ length: 60 }, (_, i) => clockCard(1 + (i % 12), (i * 5) % 60));
    const pages = await printed(answersOf([...clocks, ...cardsOf('bonds.to20', 60)]));
    expect(pages.length).toBeGreaterThan(1);
    for (const [i, page] of pages.entries()) {
      expect(wordsOf(page)).toContain(`page ${i + 1} of ${pages.length}`);
      expectWithinEdges(page);
      expectApart(page);
    }
  });
});
