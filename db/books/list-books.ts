import { pagesLeft } from '../../drills/index.ts';
import { childrenOfClass } from '../children/list-children.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import type { Book } from './book-settings.ts';
import { childQueues } from './child-queues.ts';
import { booksInLine, checkOwnChild, ownBook } from './lines.ts';

/** The class's workbooks, or with `childId` that child's own, in the order they come; those put away are left out. */
export async function listBooks(
  store: Store,
  scope: TeacherScope,
  childId: string | null = null,
): Promise<Book[]> {
  await getClass(store, scope);
  if (childId !== null) await checkOwnChild(store, scope, childId);
  const line = await booksInLine(store, { classId: scope.classId, childId });
  return line.map(({ place: _, ...book }) => book);
}

/** The class's workbook that is under way: the first one that not every child has done; the last when all are. */
export async function currentBook(store: Store, scope: TeacherScope): Promise<Book | null> {
  const { classId } = scope;
  const line = await listBooks(store, scope);
  if (line.length < 2) return line[0] ?? null;
  const childIds = (await childrenOfClass(store, classId)).map(({ id }) => id);
  const queues = [...(await childQueues(store, { classId, childIds })).values()];
  const isDone = ({ id }: Book) =>
    queues.length > 0 &&
    queues.every((queue) => queue.every((each) => each.book.id !== id || pagesLeft(each) === 0));
  return line.find((each) => !isDone(each)) ?? line.at(-1) ?? null;
}

/** One workbook of the class or of a child in it; `not_found` once it is put away. */
export async function getBook(store: Store, scope: TeacherScope, bookId: string): Promise<Book> {
  await getClass(store, scope);
  return ownBook(store, scope, bookId);
}
