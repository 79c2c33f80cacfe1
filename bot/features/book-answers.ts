import {
  AppError,
  addBook,
  changeBook,
  getBook,
  listChildren,
  setClassPage,
  setPage,
  type TeacherScope,
} from '../../db/index.ts';
import { parseBookText } from '../input/book-text.ts';
import { parsePageText } from '../input/page-text.ts';
import { undoRow } from '../screens/book-screens.ts';
import { type Button, button } from '../screens/screen.ts';
import * as texts from '../texts/book-questions.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { errorText } from '../texts/errors.ts';
import { quote } from '../texts/quote.ts';
import { lines } from '../texts/words.ts';
import { type BookQuestion, fulfilled } from './expectations.ts';
import type { Typed } from './say.ts';
import { teacherScope } from './teacher-scope.ts';

/**
 * Takes what a teacher typed about a workbook. A bad value gets a reply that names it, the range and the remedy, and the
 * question stays open; nothing is stored then.
 */
export async function bookAnswer(message: Typed, question: BookQuestion): Promise<void> {
  const { deps, userId } = message;
  const scope = await teacherScope(deps.store, userId, question.classId);
  let used: boolean;
  try {
    used = await take(message, scope, question);
  } catch (error) {
    if (!(error instanceof AppError) || error.code === 'not_found') throw error;
    await message.reply(lines(quote(message.text), errorText(error)));
    return;
  }
  if (used) await fulfilled(deps, userId);
}

/** True when the answer was used; false when it was refused and the question stands. */
function take(message: Typed, scope: TeacherScope, question: BookQuestion): Promise<boolean> {
  const { what, bookId, childId } = question;
  if (what === 'new' || bookId === null) return takeNew(message, scope, childId);
  return what === 'change'
    ? takeChange(message, scope, bookId)
    : takePage(message, scope, bookId, childId);
}

async function takeNew(
  message: Typed,
  scope: TeacherScope,
  childId: string | null,
): Promise<boolean> {
  const { store, clock } = message.deps;
  const book = parseBookText(message.text);
  if (!book) return refuse(message, texts.badBook(message.text));
  const added = await addBook(store, scope, { book, childId, now: clock.now() });
  await message.reply(texts.bookAdded(added), [[wayBack(scope, childId)]]);
  return true;
}

async function takeChange(message: Typed, scope: TeacherScope, bookId: string): Promise<boolean> {
  const { store, clock } = message.deps;
  const changes = parseBookText(message.text);
  if (!changes) return refuse(message, texts.badBook(message.text));
  const act = await changeBook(store, scope, { bookId, changes, now: clock.now() });
  const { childId } = await getBook(store, scope, bookId);
  await message.reply(texts.bookChanged(), [...undoRow(act), [wayBack(scope, childId)]]);
  return true;
}

async function takePage(
  message: Typed,
  scope: TeacherScope,
  bookId: string,
  childId: string | null,
): Promise<boolean> {
  const { store, clock } = message.deps;
  const book = await getBook(store, scope, bookId);
  const page = parsePageText(message.text, book);
  if (page === null) return refuse(message, texts.badPage(message.text, book));
  const reached = { bookId, page, now: clock.now() };
  if (childId === null) {
    const set = await setClassPage(store, scope, reached);
    const said = texts.classPageSet(book, page, set);
    await message.reply(said, [...undoRow(set.act), [wayBack(scope, null)]]);
    return true;
  }
  const act = await setPage(store, scope, { ...reached, childId });
  const child = (await listChildren(store, scope)).find(({ id }) => id === childId);
  const said = texts.pageSet(book, page, child?.nickname ?? '');
  await message.reply(said, [...undoRow(act), [wayBack(scope, childId)]]);
  return true;
}

async function refuse(message: Typed, text: ReturnType<typeof texts.badBook>): Promise<false> {
  await message.reply(text);
  return false;
}

function wayBack({ classId }: TeacherScope, childId: string | null): Button {
  return childId === null
    ? button(BUTTONS.back, { kind: 'books', classId })
    : button(BUTTONS.back, { kind: 'childBooks', classId, child: childId });
}
