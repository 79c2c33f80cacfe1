import { AppError, getBook, getClass, readPageProgress } from '../../db/index.ts';
import { bookInUse } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import { cancelButton } from '../screens/set-up-screens.ts';
import * as texts from '../texts/book-questions.ts';
import { noBook } from '../texts/books.ts';
import type { Text } from '../texts/words.ts';
import { type BookQuestion, expect } from './expectations.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';

/** Everything about workbooks that a teacher answers by typing. */
export const bookQuestions: TapHandlers<
  'askNewBook' | 'askOwnBook' | 'askBook' | 'askClassPage' | 'askChildPage'
> = {
  askNewBook: async (tap, { classId }) => {
    const { store } = tap.deps;
    await getClass(store, await teacherScope(store, tap.userId, classId));
    await put(tap, { classId, what: 'new', bookId: null, childId: null }, texts.askNewBook(null));
  },
  askOwnBook: async (tap, { classId, child: childId }) => {
    const { child } = await readChild(tap, classId, childId);
    const text = texts.askNewBook(child.nickname);
    await put(tap, { classId, what: 'new', bookId: null, childId }, text);
  },
  askBook: async (tap, { classId, book: bookId }) => {
    const book = await readBook(tap, classId, bookId);
    await put(tap, { classId, what: 'change', bookId, childId: null }, texts.askChange(book));
  },
  askClassPage: async (tap, { classId, book: bookId }) => {
    const book = await readBook(tap, classId, bookId);
    await put(tap, { classId, what: 'page', bookId, childId: null }, texts.askPage(book, null));
  },
  askChildPage: async (tap, { classId, child: childId }) => {
    const { child, queue } = await readChild(tap, classId, childId);
    // Once all books are done it is the last one that may not be.
    const book = (bookInUse(queue) ?? queue.at(-1))?.book;
    if (!book) return tap.answer(noBook(), 'alert');
    const text = texts.askPage(book, child.nickname);
    await put(tap, { classId, what: 'page', bookId: book.id, childId }, text);
  },
};

async function put(tap: Tap, question: BookQuestion, text: Text): Promise<void> {
  const { deps, userId } = tap;
  await expect(deps, userId, { kind: 'book', data: question });
  await tap.answer();
  await sendScreen(deps, userId, { text, buttons: [[cancelButton()]] });
}

async function readBook({ deps, userId }: Tap, classId: string, bookId: string) {
  return getBook(deps.store, await teacherScope(deps.store, userId, classId), bookId);
}

async function readChild({ deps, userId }: Tap, classId: string, childId: string) {
  const scope = await teacherScope(deps.store, userId, classId);
  const children = await readPageProgress(deps.store, scope, deps.clock.now());
  const progress = children.find(({ child }) => child.id === childId);
  if (!progress) throw new AppError('not_found', 'child');
  return progress;
}
