import { and, eq, isNull } from 'drizzle-orm';
import { keepAct } from '../acts/keep-act.ts';
import type { Inverse } from '../acts/undo-act.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { book } from '../schema/index.ts';
import { type BookSettings, checkBook } from './book-settings.ts';
import { booksInLine, checkRoom, noRoom, ownBook } from './lines.ts';

/**
 * Changes a workbook's title, pages or pages a day. Nobody loses their place: it is a page, not a share of the book. A child
 * who is before a later first page begins there; a later last page opens a book again that was done. Returns the act that can
 * be taken back; null when nothing was changed.
 */
export async function changeBook(
  store: Store,
  scope: TeacherScope,
  input: { bookId: string; changes: Partial<BookSettings>; now: Date },
): Promise<string | null> {
  const { bookId, changes, now } = input;
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const { id, childId, ...before } = await ownBook(inner, scope, bookId);
    const after = checkBook({ ...before, ...changes });
    const line = await booksInLine(inner, { classId: scope.classId, childId });
    checkRoom(line, { id, title: after.title });
    if (isSame(before, after)) return null;
    await inner.db.update(book).set(after).where(eq(book.id, id));
    return keepAct(inner, scope, { kind: 'bookChanged', before: { bookId, ...before }, now });
  });
}

/** Gives a book back the settings it had; `conflict` when it was put away or another one has its old title by now. */
export const undoBookChange: Inverse<'bookChanged'> = async (inner, { classId, before }) => {
  const { bookId, ...settings } = before;
  await lockClass(inner, classId);
  const [row] = await inner.db
    .select({ childId: book.childId })
    .from(book)
    .where(and(eq(book.id, bookId), eq(book.classId, classId), isNull(book.retiredAt)));
  const line = row ? await booksInLine(inner, { classId, childId: row.childId }) : [];
  if (!row || noRoom(line, { id: bookId, title: settings.title })) {
    throw new AppError('conflict', 'undo');
  }
  await inner.db.update(book).set(settings).where(eq(book.id, bookId));
};

function isSame(one: BookSettings, other: BookSettings): boolean {
  return (
    one.title === other.title &&
    one.firstPage === other.firstPage &&
    one.lastPage === other.lastPage &&
    one.pagesADay === other.pagesADay
  );
}
