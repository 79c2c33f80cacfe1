import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pageOf } from '../../../bot/screens/pages.ts';

describe('a page of a list', () => {
  it('reads as its docstring says', () => {
    expect(pageOf(['a', 'b', 'c'], 1, 2)).toEqual({ shown: ['c'], page: 1, pages: 2 });
  });

  it('of an empty list is empty, and the only one', () => {
    expect(pageOf([], 0, 10)).toEqual({ shown: [], page: 0, pages: 1 });
  });

  it('past the end is the last one', () => {
    expect(pageOf(['a', 'b', 'c'], 9_999, 2)).toEqual(pageOf(['a', 'b', 'c'], 1, 2));
  });

  it('shows each item once, in order, when all pages are turned', () => {
    const lists = fc.array(fc.nat(), { maxLength: 50 });
    fc.assert(
      fc.property(lists, fc.integer({ min: 1, max: 12 }), (items, size) => {
        const { pages } = pageOf(items, 0, size);
        const turned = Array.from({ length: pages }, (_, page) => pageOf(items, page, size).shown);
        expect(turned.flat()).toEqual(items);
        for (const shown of turned) expect(shown.length).toBeLessThanOrEqual(size);
      }),
    );
  });
});
