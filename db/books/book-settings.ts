import { AppError } from '../errors.ts';
import { book } from '../schema/index.ts';

/** Allowed ranges of a workbook, and how many may stand in one line: a class's, or a child's own. */
export const BOOK_LIMITS = { titleLength: 60, page: 999, pagesADay: 5, inLine: 6 } as const;

/** A workbook as a teacher sets it. */
export interface BookSettings {
  readonly title: string;
  readonly firstPage: number;
  readonly lastPage: number;
  readonly pagesADay: number;
}

/** A workbook in a line. `childId` is null when it is the whole class's. */
export interface Book extends BookSettings {
  readonly id: string;
  readonly childId: string | null;
}

/** What a {@link Book} is read from. */
export const BOOK_COLUMNS = {
  id: book.id,
  childId: book.childId,
  title: book.title,
  firstPage: book.firstPage,
  lastPage: book.lastPage,
  pagesADay: book.pagesADay,
};

/** The settings with a trimmed title; `invalid` for what is out of range. */
export function checkBook(settings: BookSettings): BookSettings {
  const title = settings.title.trim();
  const pages = [settings.firstPage, settings.lastPage];
  if (title.length === 0 || [...title].length > BOOK_LIMITS.titleLength) refuse('book title');
  if (pages.some((page) => !Number.isInteger(page) || page < 1 || page > BOOK_LIMITS.page)) {
    refuse('page');
  }
  if (settings.firstPage > settings.lastPage) refuse('page order');
  const { pagesADay } = settings;
  if (!Number.isInteger(pagesADay) || pagesADay < 1 || pagesADay > BOOK_LIMITS.pagesADay) {
    refuse('pages a day');
  }
  return { ...settings, title };
}

function refuse(what: string): void {
  throw new AppError('invalid', what);
}
