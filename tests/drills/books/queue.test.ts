import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  atPage,
  type BookPages,
  bookInUse,
  pagesForADay,
  pagesLeft,
  pagesLeftUntil,
} from '../../../drills/index.ts';

const BOOK: BookPages = { firstPage: 3, lastPage: 9, pagesADay: 2 };

const anyBook = fc
  .record({
    firstPage: fc.integer({ min: 1, max: 50 }),
    more: fc.integer({ min: 0, max: 50 }),
    pagesADay: fc.integer({ min: 1, max: 5 }),
  })
  .map(({ firstPage, more, pagesADay }) => ({
    firstPage,
    lastPage: firstPage + more,
    pagesADay,
  }));

describe('a book in a child’s line', () => {
  it('begins at its first page, and is never before it or more than one page past its last', () => {
    expect([null, 1, 3, 5, 9, 10, 99].map((page) => atPage(BOOK, page).page)).toEqual([
      3, 3, 3, 5, 9, 10, 10,
    ]);
  });

  it('asks for its pages a day, at the end for what is left, and then for none', () => {
    expect(pagesForADay(atPage(BOOK, 4))).toEqual({ from: 4, to: 5 });
    expect(pagesForADay(atPage(BOOK, 9))).toEqual({ from: 9, to: 9 });
    expect(pagesForADay(atPage(BOOK, 10))).toBeNull();
  });

  it('read a day at a time asks for each page once, in order', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const pages: number[] = [];
        for (let at = atPage(book, null); ; ) {
          const span = pagesForADay(at);
          if (!span) break;
          for (let page = span.from; page <= span.to; page += 1) pages.push(page);
          at = atPage(book, span.to + 1);
        }
        const all = Array.from({ length: pagesLeft(atPage(book, null)) }, (_, at) => at);
        expect(pages).toEqual(all.map((at) => book.firstPage + at));
      }),
    );
  });
});

describe('a child’s line of books', () => {
  const done = atPage(BOOK, 10);
  const begun = atPage({ ...BOOK }, 8);
  const next = atPage({ ...BOOK }, null);

  it('is at the first book that is not done', () => {
    expect(bookInUse([done, begun, next])).toBe(begun);
    expect(bookInUse([next, begun])).toBe(next);
    expect(bookInUse([done])).toBeNull();
    expect(bookInUse([])).toBeNull();
  });

  it('has to do what is left of the books before one as well', () => {
    const queue = [done, begun, next];
    expect([0, 1, 2].map((place) => pagesLeftUntil(queue, place))).toEqual([0, 2, 9]);
  });
});
