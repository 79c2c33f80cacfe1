import { and, asc, desc, eq, inArray, isNull, or, sql } from 'drizzle-orm';
import { atPage, type QueuedBook } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { book, evening, pageLog, pagePlace } from '../schema/index.ts';
import { BOOK_COLUMNS, type Book } from './book-settings.ts';

/** Children of a class whose lines of books are wanted. */
export interface ChildrenOfClass {
  readonly classId: string;
  readonly childIds: readonly string[];
}

/**
 * The books each child works through, in order, and the page it has reached in each: its own first, then the class's. For the
 * engine, and after a scope check for the teacher.
 *
 * A place is the later of two things: the teacher's word, and the latest evening whose pages were told, which began at a page
 * and went on by as many. An evening that was planned before the teacher spoke is part of what the teacher meant.
 */
export async function childQueues(
  store: Store,
  wanted: ChildrenOfClass,
): Promise<ReadonlyMap<string, readonly QueuedBook<Book>[]>> {
  const childIds = [...wanted.childIds];
  if (childIds.length === 0) return new Map();
  const books = await store.db
    .select(BOOK_COLUMNS)
    .from(book)
    .where(
      and(
        eq(book.classId, wanted.classId),
        isNull(book.retiredAt),
        or(isNull(book.childId), inArray(book.childId, childIds)),
      ),
    )
    .orderBy(asc(sql`${book.childId} is null`), asc(book.place), asc(book.id));
  const pageOf = await readPages(store, childIds, books);
  return new Map(
    childIds.map((childId) => [
      childId,
      books
        .filter((each) => each.childId === null || each.childId === childId)
        .map((each) => atPage(each, pageOf(childId, each.id))),
    ]),
  );
}

/** A page that a child has reached in a book, as somebody told it at an instant. */
interface Reached {
  readonly childId: string;
  readonly bookId: string;
  readonly page: number;
  readonly at: Date;
}

async function readPages(
  store: Store,
  childIds: string[],
  books: readonly Book[],
): Promise<(childId: string, bookId: string) => number | null> {
  if (books.length === 0) return () => null;
  const bookIds = books.map(({ id }) => id);
  const told = await evenings(store, childIds, bookIds);
  const newest = new Map(told.map((each) => [`${each.childId} ${each.bookId}`, each]));
  for (const said of await saidByTeacher(store, childIds, bookIds)) {
    const key = `${said.childId} ${said.bookId}`;
    const evening = newest.get(key);
    if (!evening || evening.at <= said.at) newest.set(key, said);
  }
  return (childId, bookId) => newest.get(`${childId} ${bookId}`)?.page ?? null;
}

/** The latest evening of each child and book whose pages were told, by its latest word. */
async function evenings({ db }: Store, childIds: string[], bookIds: string[]): Promise<Reached[]> {
  return db
    .selectDistinctOn([pageLog.childId, pageLog.bookId], {
      childId: pageLog.childId,
      bookId: pageLog.bookId,
      page: sql<number>`${evening.pageFrom} + ${pageLog.pages}`,
      at: evening.createdAt,
    })
    .from(pageLog)
    .innerJoin(evening, eq(evening.id, pageLog.eveningId))
    .where(and(inArray(pageLog.childId, childIds), inArray(pageLog.bookId, bookIds)))
    .orderBy(pageLog.childId, pageLog.bookId, desc(evening.day), desc(pageLog.revision));
}

/** What the teacher said last of each child and book. */
async function saidByTeacher(
  { db }: Store,
  childIds: string[],
  bookIds: string[],
): Promise<Reached[]> {
  return db
    .selectDistinctOn([pagePlace.childId, pagePlace.bookId], {
      childId: pagePlace.childId,
      bookId: pagePlace.bookId,
      page: pagePlace.page,
      at: pagePlace.saidAt,
    })
    .from(pagePlace)
    .where(
      and(
        inArray(pagePlace.childId, childIds),
        inArray(pagePlace.bookId, bookIds),
        isNull(pagePlace.takenBackAt),
      ),
    )
    .orderBy(pagePlace.childId, pagePlace.bookId, desc(pagePlace.saidAt), desc(pagePlace.id));
}
