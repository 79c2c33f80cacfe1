import { and, eq, inArray } from 'drizzle-orm';
import { pagesLeft } from '../../drills/index.ts';
import { keepAct } from '../acts/keep-act.ts';
import type { Inverse } from '../acts/undo-act.ts';
import { childrenOfClass } from '../children/list-children.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { pagePlace } from '../schema/index.ts';
import type { Book } from './book-settings.ts';
import { childQueues } from './child-queues.ts';
import { checkOwnChild, ownBook } from './lines.ts';

/** Where somebody is in a book: `page` is the next one to do; the one after the last says that the book is done. */
export interface PageReached {
  readonly bookId: string;
  readonly page: number;
  readonly now: Date;
}

/**
 * Says where a child is in a book of its line, further on or further back. It counts from the next evening on; an evening that
 * was sent keeps its pages. A page outside the book is `invalid`, a book that is not in the child's line `not_found`. Returns
 * the act that can be taken back.
 */
export async function setPage(
  store: Store,
  scope: TeacherScope,
  input: PageReached & { childId: string },
): Promise<string> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await checkOwnChild(inner, scope, input.childId);
    const book = await ownBook(inner, scope, input.bookId);
    if (book.childId !== null && book.childId !== input.childId) {
      throw new AppError('not_found', 'book');
    }
    checkPage(book, input.page);
    return keepPages(inner, scope, book, [input.childId], input);
  });
}

/** What became of a page that was said for the whole class. `act` is null when every child was there or further on. */
export interface ClassPageSet {
  readonly act: string | null;
  readonly moved: number;
  /** Children who were further on, and stay there. */
  readonly further: number;
}

/** Says where the whole class is in one of its books. Children who are further on stay there: their pages are done. */
export async function setClassPage(
  store: Store,
  scope: TeacherScope,
  input: PageReached,
): Promise<ClassPageSet> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    const book = await ownBook(inner, scope, input.bookId);
    if (book.childId !== null) throw new AppError('not_found', 'book');
    checkPage(book, input.page);
    const { classId } = scope;
    const childIds = (await childrenOfClass(inner, classId)).map(({ id }) => id);
    const queues = await childQueues(inner, { classId, childIds });
    const left = book.lastPage + 1 - input.page;
    const leftOf = (childId: string) => {
      const queued = queues.get(childId)?.find((each) => each.book.id === book.id);
      return queued ? pagesLeft(queued) : 0;
    };
    const behind = childIds.filter((childId) => leftOf(childId) > left);
    const further = childIds.filter((childId) => leftOf(childId) < left).length;
    const act = behind.length === 0 ? null : await keepPages(inner, scope, book, behind, input);
    return { act, moved: behind.length, further };
  });
}

/** Takes back what was said: each child is again where it was, or where its evenings have led it since. */
export const undoPages: Inverse<'pagesSet'> = async (inner, { before }, now) => {
  await inner.db
    .update(pagePlace)
    .set({ takenBackAt: now })
    .where(and(eq(pagePlace.bookId, before.bookId), inArray(pagePlace.id, before.placeIds)));
};

async function keepPages(
  inner: Store,
  scope: TeacherScope,
  { id: bookId, title }: Book,
  childIds: readonly string[],
  { page, now }: PageReached,
): Promise<string> {
  const rows = childIds.map((childId) => ({ id: newId(now), childId, bookId, page, saidAt: now }));
  await inner.db.insert(pagePlace).values(rows);
  const [only, ...others] = childIds;
  const placeIds = rows.map(({ id }) => id);
  const about = only !== undefined && others.length === 0 ? { childId: only } : {};
  const before = { bookId, title, placeIds, ...about };
  return keepAct(inner, scope, { kind: 'pagesSet', before, now });
}

function checkPage({ firstPage, lastPage }: Book, page: number): void {
  if (!Number.isInteger(page) || page < firstPage || page > lastPage + 1) {
    throw new AppError('invalid', 'page of the book');
  }
}
