import { describe, expect, it } from 'vitest';
import { squarePages } from '../../../bot/paper/index.ts';
import { expectApart, expectWithinEdges, printed } from './within.ts';

describe('a number square', () => {
  it.each(['a4', 'letter'] as const)(
    'on %s holds its hundred numbers once, ten to a row',
    async (paper) => {
      const pages = await printed(squarePages({ firsts: [1, 101], paper }));
      expect(pages).toHaveLength(2);
      for (const [i, page] of pages.entries()) {
        const numbers = page.texts.map(({ text }) => Number(text));
        expect(numbers).toEqual(Array.from({ length: 100 }, (_, k) => 100 * i + k + 1));
        const rows = new Set(page.texts.map(({ y }) => Math.round(y / 10)));
        expect(rows.size).toBe(10);
        expectWithinEdges(page);
        expectApart(page);
      }
    },
  );

  it('keeps one more ten under one: n and n + 10 stand in one column', async () => {
    const [page] = await printed(squarePages({ firsts: [1], paper: 'a4' }));
    const middle = (n: number) => {
      const found = page?.texts.find(({ text }) => text === String(n));
      return (found?.x ?? 0) + (found?.width ?? 0) / 2;
    };
    for (const n of [11, 37, 55, 80]) expect(middle(n)).toBeCloseTo(middle(n + 10), 0);
  });

  it.each([[[]], [[0]], [[1.5]], [[9_902]]])('from %j is refused', (firsts) => {
    expect(() => squarePages({ firsts, paper: 'a4' })).toThrow(RangeError);
  });
});
