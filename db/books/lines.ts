import { and, asc, eq, isNull } from 'drizzle-orm';
import type { TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { book, child } from '../schema/index.ts';
import { BOOK_COLUMNS, BOOK_LIMITS, type Book } from './book-settings.ts';

/** Whose line of books: a child's own, or, with null, the class's. */
export interface BookOwner {
  readonly classId: string;
  readonly childId: string | null;
}

/** The books of one line that are not put away, in their order. */
export async function booksInLine(
  store: Store,
  { classId, childId }: BookOwner,
): Promise<(Book & { readonly place: number })[]> {
  return store.db
    .select({ ...BOOK_COLUMNS, place: book.place })
    .from(book)
    .where(
      and(
        eq(book.classId, classId),
        childId === null ? isNull(book.childId) : eq(book.childId, childId),
        isNull(book.retiredAt),
      ),
    )
    .orderBy(asc(book.place), asc(book.id));
}

/** A book of the class, or of one of its children, that is not put away; any other is `not_found`. */
export async function ownBook(store: Store, scope: TeacherScope, bookId: string): Promise<Book> {
  const [row] = await store.db
    .select(BOOK_COLUMNS)
    .from(book)
    .where(and(eq(book.id, bookId), eq(book.classId, scope.classId), isNull(book.retiredAt)));
  if (!row) throw new AppError('not_found', 'book');
  return row;
}

/** Refuses a child that is not in the class, as `not_found`. */
export async function checkOwnChild(
  store: Store,
  scope: TeacherScope,
  childId: string,
): Promise<void> {
  const [row] = await store.db
    .select({ id: child.id })
    .from(child)
    .where(and(eq(child.id, childId), eq(child.classId, scope.classId), isNull(child.archivedAt)));
  if (!row) throw new AppError('not_found', 'child');
}

/**
 * Why a line has no room for a book: its `title` stands there already (capitals make no difference), or it is `full`. Null when
 * it has. The book itself does not stand in its own way.
 */
export function noRoom(
  line: readonly Book[],
  book: { readonly id: string; readonly title: string },
): 'title' | 'full' | null {
  const others = line.filter(({ id }) => id !== book.id);
  const isTaken = others.some((each) => each.title.toLowerCase() === book.title.toLowerCase());
  if (isTaken) return 'title';
  return others.length >= BOOK_LIMITS.inLine ? 'full' : null;
}

/** Refuses a book that a line has no room for: `conflict` by its title, `invalid` by the number of books. */
export function checkRoom(line: readonly Book[], book: { id: string; title: string }): void {
  const problem = noRoom(line, book);
  if (problem === 'title') throw new AppError('conflict', 'book title');
  if (problem === 'full') throw new AppError('invalid', 'number of books');
}
