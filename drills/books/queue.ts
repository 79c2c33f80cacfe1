/** The pages of a workbook, first and last, and how many a day are asked for. */
export interface BookPages {
  readonly firstPage: number;
  readonly lastPage: number;
  readonly pagesADay: number;
}

/** A book in a child's line. `page` is the next one to do; the one after the last once the book is done. */
export interface QueuedBook<B extends BookPages = BookPages> {
  readonly book: B;
  readonly page: number;
}

/** Pages from one to another, both included. */
export interface PageSpan {
  readonly from: number;
  readonly to: number;
}

/**
 * A book with the place a child has reached in it, kept within its pages: a book whose first page was moved on begins there.
 * A child of whom nothing is known begins at the first page.
 *
 * @example
 * atPage({ firstPage: 3, lastPage: 9, pagesADay: 2 }, 12).page; // 10: done
 */
export function atPage<B extends BookPages>(book: B, page: number | null): QueuedBook<B> {
  const reached = page ?? book.firstPage;
  return { book, page: Math.min(Math.max(reached, book.firstPage), book.lastPage + 1) };
}

/** Pages of a book that are still to do; 0 once it is done. */
export function pagesLeft({ book, page }: QueuedBook): number {
  return book.lastPage + 1 - page;
}

/** The first book of a line that is not done; null when all are. */
export function bookInUse<B extends BookPages>(
  queue: readonly QueuedBook<B>[],
): QueuedBook<B> | null {
  return queue.find((each) => pagesLeft(each) > 0) ?? null;
}

/**
 * A day's pages of a book: as many as it asks for, ending with the last page; null once the book is done.
 *
 * @example
 * pagesForADay({ book: { firstPage: 1, lastPage: 9, pagesADay: 2 }, page: 9 }); // { from: 9, to: 9 }
 */
export function pagesForADay(queued: QueuedBook): PageSpan | null {
  const { book, page } = queued;
  if (pagesLeft(queued) <= 0) return null;
  return { from: page, to: Math.min(page + book.pagesADay - 1, book.lastPage) };
}

/** Pages still to do until the book at a place of the line, counted from 0, is done: what comes before it is done first. */
export function pagesLeftUntil(queue: readonly QueuedBook[], place: number): number {
  return queue.slice(0, place + 1).reduce((sum, each) => sum + pagesLeft(each), 0);
}
