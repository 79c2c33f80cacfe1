import { bookInUse, type PageSpan, pagesForADay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import type { Book } from './book-settings.ts';
import { childQueues } from './child-queues.ts';

/** A child's pages for one day, and the book they are in. */
export interface NextPages extends PageSpan {
  readonly book: Book;
}

/** The pages a child's next evening asks for: of the first book of its line that is not done. Null when all are. */
export async function nextPages(
  store: Store,
  { childId, classId }: { childId: string; classId: string },
): Promise<NextPages | null> {
  const queues = await childQueues(store, { classId, childIds: [childId] });
  const inUse = bookInUse(queues.get(childId) ?? []);
  const pages = inUse && pagesForADay(inUse);
  return inUse && pages ? { book: inUse.book, ...pages } : null;
}
