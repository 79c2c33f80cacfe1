import type { Book, SchoolClass } from '../../db/index.ts';
import { type ClassFinish, pagesLeft, type QueuedBook } from '../../drills/index.ts';
import { ENOUGH, TITLE_LENGTH, whenDone } from './book-words.ts';
import { shorten } from './quote.ts';
import { bold, count, lines, name, pageRange, type Text } from './words.ts';

/** A day's pages, as families and teachers read them. */
export function pagesOf(title: string, { from, to }: { from: number; to: number }): string {
  return `${name(title)}, ${pageRange(from, to)}`;
}

/** The class's workbooks in their order. `withOwn` is how many children have books of their own. */
export function bookList(schoolClass: SchoolClass, books: readonly Book[], withOwn: number): Text {
  const own = withOwn === 1 ? 'has a book of its own' : 'have books of their own';
  return lines(
    bold(`${name(schoolClass.title)}: workbooks`),
    ...books.map((book, place) => `${place + 1}. ${shorten(book.title, 40)}: ${settings(book)}`),
    hint(books.length),
    withOwn > 0 ? `${count(withOwn, 'child', 'children')} ${own}, which comes first.` : null,
  );
}

function hint(books: number): string {
  if (books === 0) return 'None yet. Evenings ask for no pages.';
  return books === 1
    ? 'Tap it to change it. Add the next one in time: whoever is done goes on by itself.'
    : 'Whoever has done one goes on to the next. Tap a workbook to change it.';
}

/** A book's button in a list. */
export function bookLabel(book: Book, place: number): string {
  return `${place + 1}. ${shorten(book.title, TITLE_LENGTH)}`;
}

function settings({ firstPage, lastPage, pagesADay }: Book): string {
  return `${pageRange(firstPage, lastPage)}, ${pagesADay} a day`;
}

/** A workbook of the class: where the children are in it and when they will be done. */
export function classBook(
  book: Book,
  input: {
    readonly place: number;
    readonly inLine: number;
    readonly children: readonly QueuedBook<Book>[];
    readonly finish: ClassFinish | null;
  },
): Text {
  const { place, inLine, children, finish } = input;
  const done = children.filter((each) => pagesLeft(each) === 0).length;
  const begun = children.filter(({ page }) => page > book.firstPage).length - done;
  const notBegun = children.length - begun - done;
  return lines(
    bold(name(book.title)),
    `${capital(settings(book))}. Number ${place + 1} of ${inLine}.`,
    children.length > 0 ? `Children in it: ${begun}. Done: ${done}. Not begun: ${notBegun}.` : null,
    ...(children.length > done ? classFinish(finish, children.length) : []),
    'What you change counts from the next evening. Nobody loses a page.',
    'Tap how many pages a day:',
  );
}

function classFinish(finish: ClassFinish | null, children: number): string[] {
  if (!finish) return [`Too early to say when: half of the children need ${ENOUGH}.`];
  const { half, nearlyAll, known } = finish;
  const others = children - known;
  return [
    `Half of the class: ${whenDone(half, 'not within a year')}. Nine in ten: ${whenDone(nearlyAll, 'not within a year')}.`,
    others > 0 ? `From ${known} of ${children} children, at their own pace.` : 'At their own pace.',
  ];
}

/** A child's own workbook. */
export function ownBook(nickname: string, queued: QueuedBook<Book>): Text {
  const { book } = queued;
  return lines(
    bold(name(book.title)),
    `${capital(settings(book))}. ${name(nickname)}’s own; it comes before the class’s.`,
    at(queued),
    'What you change counts from the next evening. Nobody loses a page.',
    'Tap how many pages a day:',
  );
}

function at({ book, page }: QueuedBook<Book>): string {
  return page > book.lastPage ? 'Done.' : `On page ${page} of ${book.lastPage}.`;
}

/** A tap on a book that was put away. */
export const BOOK_GONE = 'That workbook is put away already.';
/** A tap that asks where a child without a workbook is. */
export const NO_BOOK = 'There is no workbook to set a page in. Add one first.';

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
