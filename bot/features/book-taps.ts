import {
  AppError,
  type Book,
  type ChildProgress,
  changeBook,
  getBook,
  getClass,
  listBooks,
  moveBook,
  putAwayBook,
  readPageProgress,
  type TeacherScope,
} from '../../db/index.ts';
import { booksScreen, classBookScreen, ownBookScreen, undoRow } from '../screens/book-screens.ts';
import { childBooksScreen, placesScreen } from '../screens/place-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { bookGone } from '../texts/books.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** Everything a teacher can tap about workbooks, but for what is then typed. */
export const bookTaps: TapHandlers<
  'books' | 'oneBook' | 'moveBook' | 'bookPace' | 'putAwayBook' | 'bookPlaces' | 'childBooks'
> = {
  books: (tap, { classId }) => turn(tap, classId, (scope) => readBooks(tap, scope)),
  oneBook: (tap, { classId, book }) => turn(tap, classId, (scope) => readBook(tap, scope, book)),
  moveBook: (tap, { classId, book, to }) =>
    turn(tap, classId, async (scope) => {
      await moveBook(tap.deps.store, scope, { bookId: book, to });
      return readBook(tap, scope, book);
    }),
  bookPace: (tap, { classId, book, pages }) =>
    turn(tap, classId, async (scope) => {
      const { store, clock } = tap.deps;
      const changes = { pagesADay: pages };
      await changeBook(store, scope, { bookId: book, changes, now: clock.now() });
      return readBook(tap, scope, book);
    }),
  putAwayBook: putAway,
  bookPlaces: (tap, { classId, page }) =>
    turn(tap, classId, async (scope) =>
      placesScreen(await getClass(tap.deps.store, scope), await progressOf(tap, scope), page),
    ),
  childBooks: (tap, { classId, child }) =>
    turn(tap, classId, (scope) => readChildBooks(tap, scope, child)),
};

/** Puts a book away and shows what is left, with the way to take it back. A second tap leaves that way where it is. */
async function putAway(
  tap: Tap,
  { classId, book: bookId }: { classId: string; book: string },
): Promise<void> {
  const { store, clock } = tap.deps;
  const scope = await teacherScope(store, tap.userId, classId);
  const book = await findBook(tap, scope, bookId);
  if (!book) return tap.answer(bookGone());
  const act = await putAwayBook(store, scope, { bookId, now: clock.now() });
  await tap.answer();
  await tap.show(
    book.childId === null
      ? await readBooks(tap, scope, act)
      : await readChildBooks(tap, scope, book.childId, act),
  );
}

async function findBook(tap: Tap, scope: TeacherScope, bookId: string): Promise<Book | null> {
  try {
    return await getBook(tap.deps.store, scope, bookId);
  } catch (error) {
    if (error instanceof AppError && error.code === 'not_found' && error.what === 'book') {
      return null;
    }
    throw error;
  }
}

async function readBooks(
  tap: Tap,
  scope: TeacherScope,
  act: string | null = null,
): Promise<Screen> {
  const { store } = tap.deps;
  const schoolClass = await getClass(store, scope);
  const withOwn = (await progressOf(tap, scope)).filter(hasOwn).length;
  return booksScreen(schoolClass, await listBooks(store, scope), withOwn, act);
}

async function readBook(tap: Tap, scope: TeacherScope, bookId: string): Promise<Screen> {
  const { store } = tap.deps;
  const book = await findBook(tap, scope, bookId);
  // Put away in another message: what is left says more than an error.
  if (!book) return readBooks(tap, scope);
  const children = await progressOf(tap, scope);
  const owner = children.find(({ child }) => child.id === book.childId);
  if (owner) return ownBookScreen(scope.classId, book, owner);
  return classBookScreen(scope.classId, await listBooks(store, scope), book, children);
}

async function readChildBooks(
  tap: Tap,
  scope: TeacherScope,
  childId: string,
  act: string | null = null,
): Promise<Screen> {
  const children = await progressOf(tap, scope);
  const place = children.findIndex(({ child }) => child.id === childId);
  const progress = children[place];
  if (!progress) throw new AppError('not_found', 'child');
  return childBooksScreen(scope.classId, progress, place, undoRow(act));
}

function progressOf({ deps }: Tap, scope: TeacherScope): Promise<ChildProgress[]> {
  return readPageProgress(deps.store, scope, deps.clock.now());
}

function hasOwn({ queue }: ChildProgress): boolean {
  return queue.some(({ book }) => book.childId !== null);
}
