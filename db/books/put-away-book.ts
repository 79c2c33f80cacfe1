import { and, eq, isNotNull } from 'drizzle-orm';
import { keepAct } from '../acts/keep-act.ts';
import type { Inverse } from '../acts/undo-act.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { book } from '../schema/index.ts';
import { BOOK_COLUMNS } from './book-settings.ts';
import { booksInLine, noRoom, ownBook } from './lines.ts';

/**
 * Takes a workbook out of its line: evenings ask for the next one's pages. Its pages stay counted, and an evening that was sent
 * already still takes them. Returns the act that can be taken back.
 */
export async function putAwayBook(
  store: Store,
  scope: TeacherScope,
  input: { bookId: string; now: Date },
): Promise<string> {
  const { bookId, now } = input;
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const { title } = await ownBook(inner, scope, bookId);
    await inner.db.update(book).set({ retiredAt: now }).where(eq(book.id, bookId));
    return keepAct(inner, scope, { kind: 'bookPutAway', before: { bookId, title }, now });
  });
}

/** Puts a book back where it stood; `conflict` when its line is full or has its title again by now. */
export const undoPuttingAway: Inverse<'bookPutAway'> = async (inner, { classId, before }) => {
  await lockClass(inner, classId);
  const [row] = await inner.db
    .select(BOOK_COLUMNS)
    .from(book)
    .where(and(eq(book.id, before.bookId), eq(book.classId, classId), isNotNull(book.retiredAt)));
  // A child's own book has gone with the child to another class.
  const line = row ? await booksInLine(inner, { classId, childId: row.childId }) : [];
  if (!row || noRoom(line, row)) throw new AppError('conflict', 'undo');
  await inner.db.update(book).set({ retiredAt: null }).where(eq(book.id, row.id));
};
