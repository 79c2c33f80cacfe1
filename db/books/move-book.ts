import { eq } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { book } from '../schema/index.ts';
import { booksInLine, ownBook } from './lines.ts';

/**
 * Puts a workbook at a place of its line, counted from 0; past the end is the end. Children keep their pages: one who is in a
 * book that now stands later goes on with it when its turn comes. The same place again changes nothing.
 */
export async function moveBook(
  store: Store,
  scope: TeacherScope,
  input: { bookId: string; to: number },
): Promise<void> {
  await inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const { id, childId } = await ownBook(inner, scope, input.bookId);
    const line = await booksInLine(inner, { classId: scope.classId, childId });
    const order = line.map((each) => each.id).filter((each) => each !== id);
    order.splice(Math.max(0, input.to), 0, id);
    for (const [index, each] of order.entries()) {
      const place = index + 1;
      if (line.some((old) => old.id === each && old.place === place)) continue;
      await inner.db.update(book).set({ place }).where(eq(book.id, each));
    }
  });
}
