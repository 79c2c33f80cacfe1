import type { Book, SchoolClass } from '../../db/index.ts';
import {
  type ClassFinish,
  ENOUGH_EVENINGS,
  pagesLeft,
  type QueuedBook,
  type ShareDone,
} from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { TITLE_LENGTH, whenDone } from './book-words.ts';
import { capital } from './capital.ts';
import { shorten } from './quote.ts';
import { bold, lines, name, pageRange, type Text } from './words.ts';

/** A day's pages, as families and teachers read them. */
export function pagesOf(title: string, { from, to }: { from: number; to: number }): string {
  return `${name(title)}, ${pageRange(from, to)}`;
}

/** The class's workbooks in their order. `withOwn` is how many children have books of their own. */
export function bookList(schoolClass: SchoolClass, books: readonly Book[], withOwn: number): Text {
  return lines(
    bold(say('books-title', { title: name(schoolClass.title) })),
    ...books.map((book, place) => {
      const title = shorten(book.title, 40);
      return say('books-line', { number: place + 1, title, settings: settings(book) });
    }),
    hint(books.length),
    withOwn > 0 ? say('books-own', { count: withOwn }) : null,
  );
}

function hint(books: number): string {
  if (books === 0) return say('books-none');
  return books === 1 ? say('books-one') : say('books-several');
}

/** A book's button in a list. */
export function bookLabel(book: Book, place: number): string {
  return `${place + 1}. ${shorten(book.title, TITLE_LENGTH)}`;
}

function settings({ firstPage, lastPage, pagesADay }: Book): string {
  return say('books-settings', { pages: pageRange(firstPage, lastPage), aDay: pagesADay });
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
    say('books-place', { settings: capital(settings(book)), place: place + 1, inLine }),
    children.length > 0 ? say('books-children', { begun, done, notBegun }) : null,
    ...(children.length > done ? classFinish(finish, children.length) : []),
    say('books-counts-from'),
    say('books-tap-pages'),
  );
}

function classFinish(finish: ClassFinish | null, children: number): string[] {
  if (!finish) return [say('books-too-early', { evenings: ENOUGH_EVENINGS })];
  const { half, nearlyAll, known } = finish;
  const when = (day: ShareDone) => whenDone(day, say('books-never'));
  return [
    say('books-finish', { half: when(half), nearlyAll: when(nearlyAll) }),
    known < children ? say('books-own-pace-of', { known, children }) : say('books-own-pace'),
  ];
}

/** A child's own workbook. */
export function ownBook(nickname: string, queued: QueuedBook<Book>): Text {
  const { book } = queued;
  return lines(
    bold(name(book.title)),
    say('books-child', { settings: capital(settings(book)), name: name(nickname) }),
    at(queued),
    say('books-counts-from'),
    say('books-tap-pages'),
  );
}

function at({ book, page }: QueuedBook<Book>): string {
  return page > book.lastPage
    ? say('books-child-done')
    : say('books-child-page', { page, last: book.lastPage });
}

/** A tap on a book that was put away. */
export function bookGone(): string {
  return say('books-gone');
}

/** A tap that asks where a child without a workbook is. */
export function noBook(): string {
  return say('books-no-book');
}
