import { and, desc, eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { pageLog } from '../schema/index.ts';
import type { Book } from './books.ts';

/** Pages of a book that a child has done, counting each evening's latest word only. */
export async function pagesDone(store: Store, childId: string, bookId: string): Promise<number> {
  const rows = await store.db
    .selectDistinctOn([pageLog.eveningId], { pages: pageLog.pages })
    .from(pageLog)
    .where(and(eq(pageLog.childId, childId), eq(pageLog.bookId, bookId)))
    .orderBy(pageLog.eveningId, desc(pageLog.revision));
  return rows.reduce((sum, row) => sum + row.pages, 0);
}

/** Tonight's pages, first and last; null once the book is finished. */
export async function nextPages(
  store: Store,
  childId: string,
  book: Book,
): Promise<{ from: number; to: number } | null> {
  const from = book.firstPage + (await pagesDone(store, childId, book.id));
  if (from > book.lastPage) return null;
  return { from, to: Math.min(from + book.pagesADay - 1, book.lastPage) };
}
