import type { BookPages } from '../../drills/index.ts';
import { oneLine } from './one-line.ts';

// The words of all our languages together: none of them means anything else in another.
const DONE =
  /^(?:done|finished|klaar|hecho|listo|lista|terminado|fertig|erledigt|fini|termin[ée]e?)\.?$/iu;
const PAGE = /^(?:(?:page|p[áa]gina|p[áa]g|p|bladsy|bl|seite|s)\.?\s*)?(?<page>\d{1,4})$/iu;

/**
 * Reads which page of a book is next: a number within it, or `done`, which is the page after the last, in any of our languages.
 * Null for anything else.
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
