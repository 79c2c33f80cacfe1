import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { book } from '../schema/index.ts';
import { type Book, type BookSettings, checkBook } from './book-settings.ts';
import { booksInLine, checkOwnChild, checkRoom } from './lines.ts';

/**
 * Puts a workbook at the end of the class's line, or of a child's own. Each child begins it when the books before it are done.
 * A title that stands in the line already is a `conflict`.
 */
export async function addBook(
  store: Store,
  scope: TeacherScope,
  input: { book: BookSettings; childId?: string | null; now: Date },
): Promise<Book> {
  const settings = checkBook(input.book);
  const owner = { classId: scope.classId, childId: input.childId ?? null };
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    if (owner.childId !== null) await checkOwnChild(inner, scope, owner.childId);
    await lockClass(inner, scope.classId);
    const line = await booksInLine(inner, owner);
    const id = newId(input.now);
    checkRoom(line, { id, title: settings.title });
    const place = (line.at(-1)?.place ?? 0) + 1;
    await inner.db.insert(book).values({ ...settings, ...owner, id, place, createdAt: input.now });
    return { ...settings, id, childId: owner.childId };
  });
}
