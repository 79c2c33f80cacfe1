import { and, eq, isNull } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { book } from '../schema/index.ts';

/** Allowed ranges of a workbook. */
export const BOOK_LIMITS = { titleLength: 60, page: 999, pagesADay: 5 } as const;

/** A class workbook as a teacher sets it. */
export interface BookSettings {
  readonly title: string;
  readonly firstPage: number;
  readonly lastPage: number;
  readonly pagesADay: number;
}

/** The workbook in use. */
export interface Book extends BookSettings {
  readonly id: string;
}

/**
 * Puts a workbook in use; an earlier one is retired, its pages stay counted. The same title continues the book: changing
 * only the pages a day loses nobody's place.
 */
export async function setBook(
  store: Store,
  scope: TeacherScope,
  input: { book: BookSettings; now: Date },
): Promise<Book> {
  const settings = checkBook(input.book);
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    const current = await bookInUse(inner, scope.classId);
    if (current && current.title === settings.title) {
      await inner.db.update(book).set(settings).where(eq(book.id, current.id));
      return { ...settings, id: current.id };
    }
    if (current) {
      await inner.db.update(book).set({ retiredAt: input.now }).where(eq(book.id, current.id));
    }
    const id = newId(input.now);
    await inner.db
      .insert(book)
      .values({ ...settings, id, classId: scope.classId, createdAt: input.now });
    return { ...settings, id };
  });
}

/** Takes the workbook out of use: evenings carry no page target any more. */
export async function retireBook(store: Store, scope: TeacherScope, now: Date): Promise<void> {
  await getClass(store, scope);
  await store.db
    .update(book)
    .set({ retiredAt: now })
    .where(and(eq(book.classId, scope.classId), isNull(book.retiredAt)));
}

/** The workbook in use, for its teacher. */
export async function getBook(store: Store, scope: TeacherScope): Promise<Book | null> {
  await getClass(store, scope);
  return bookInUse(store, scope.classId);
}

/** The workbook in use, for the planner. */
export async function bookInUse(store: Store, classId: string): Promise<Book | null> {
  const [row] = await store.db
    .select({
      id: book.id,
      title: book.title,
      firstPage: book.firstPage,
      lastPage: book.lastPage,
      pagesADay: book.pagesADay,
    })
    .from(book)
    .where(and(eq(book.classId, classId), isNull(book.retiredAt)));
  return row ?? null;
}

function checkBook(settings: BookSettings): BookSettings {
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
