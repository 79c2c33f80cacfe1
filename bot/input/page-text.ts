import type { BookPages } from '../../drills/index.ts';
import { oneLine } from './one-line.ts';

const DONE = /^(?:done|finished)\.?$/iu;
const PAGE = /^(?:page\s*|p\.?\s*)?(?<page>\d{1,4})$/iu;

/**
 * Reads which page of a book is next: a number within it, or `done`, which is the page after the last. Null for anything else.
 *
 * @example
 * parsePageText('Page 14', { firstPage: 1, lastPage: 48, pagesADay: 2 }); // 14
 */
export function parsePageText(text: string, { firstPage, lastPage }: BookPages): number | null {
  const line = oneLine(text);
  if (DONE.test(line)) return lastPage + 1;
  const page = Number(PAGE.exec(line)?.groups?.page ?? Number.NaN);
  return page >= firstPage && page <= lastPage ? page : null;
}
