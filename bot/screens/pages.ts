/** One page of a long list. `page` counts from 0; of `pages` there is always one at least. */
export interface Page<T> {
  readonly shown: readonly T[];
  readonly page: number;
  readonly pages: number;
}

/**
 * A page of a list, `size` items a page. A page past the end is the last one: a list may have become shorter since its button
 * was made.
 *
 * @example
 * pageOf(['a', 'b', 'c'], 1, 2); // { shown: ['c'], page: 1, pages: 2 }
 */
export function pageOf<T>(items: readonly T[], page: number, size: number): Page<T> {
  const pages = Math.max(1, Math.ceil(items.length / size));
  const at = Math.min(page, pages - 1);
  return { shown: items.slice(at * size, (at + 1) * size), page: at, pages };
}
