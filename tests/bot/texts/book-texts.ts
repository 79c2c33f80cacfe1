import { placed } from '../../../bot/screens/place-screens.ts';
import * as places from '../../../bot/texts/book-places.ts';
import * as questions from '../../../bot/texts/book-questions.ts';
import * as books from '../../../bot/texts/books.ts';
import type { Text } from '../../../bot/texts/words.ts';
import { atPage, projectClass } from '../../../drills/index.ts';
import { aBook, childId, pebblePath, pebblePath2, progress } from '../support/books.ts';
import { kingfisher } from '../support/kingfisher.ts';

/** The modules these come from. */
export const BOOK_MODULES: Readonly<Record<string, unknown>>[] = [books, places, questions];

/** What every function about workbooks says, for a child of this nickname. */
export function bookTexts(nickname: string): Readonly<Record<string, readonly (Text | string)[]>> {
  const own = aBook(3, 'Little Pebbles', childId(1));
  const children = [
    progress(1, nickname),
    progress(2, nickname, { evenings: [] }),
    progress(3, nickname, { evenings: [0, 0, 0, 0, 0] }),
    progress(4, nickname, { evenings: [0, 0, 0, 0, 1] }),
    progress(5, nickname, { books: [] }),
    progress(6, nickname, { books: [pebblePath], page: 49 }),
    progress(7, nickname, { books: [own, pebblePath] }),
    progress(8, nickname, { page: 48, evenings: [2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2] }),
  ];
  const shown = children.map(placed);
  const inBook = children.flatMap(({ queue }) => queue.slice(0, 1));
  const days = children[0]?.days ?? [];
  const finishes = [
    null,
    projectClass([{ left: 0, pace: null }], days),
    projectClass(
      children.map(({ pace }) => ({ left: 9, pace })),
      days,
    ),
    projectClass([{ left: 999, pace: children[3]?.pace ?? null }], days),
  ];
  return {
    pagesOf: [books.pagesOf('Pebble Path', { from: 14, to: 15 })],
    bookList: [0, 1, 2].map((count) =>
      books.bookList(kingfisher, [pebblePath, pebblePath2].slice(0, count), count),
    ),
    bookLabel: [pebblePath, pebblePath2].map(books.bookLabel),
    classBook: finishes.flatMap((finish) =>
      [[], inBook, inBook.map(({ book }) => atPage(book, 99))].map((each) =>
        books.classBook(pebblePath, { place: 0, inLine: 2, children: each, finish }),
      ),
    ),
    ownBook: [1, 14, 49].map((page) => books.ownBook(nickname, atPage(own, page))),
    placeList: [
      places.placeList(kingfisher, shown.slice(0, 7), { page: 0, pages: 6 }),
      places.placeList(kingfisher, shown.slice(7), { page: 0, pages: 1 }),
      places.placeList(kingfisher, [], { page: 0, pages: 1 }),
    ],
    childPlace: shown.map((place) => places.childPlace(place, 4)),
    askNewBook: [null, nickname].map(questions.askNewBook),
    askChange: [questions.askChange(pebblePath)],
    askPage: [null, nickname].map((each) => questions.askPage(pebblePath, each)),
    badPage: ['', 'forty', '9'.repeat(4_000)].map((typed) =>
      questions.badPage(typed || 'x', pebblePath),
    ),
    badBook: ['Pebble Path', '9'.repeat(4_000)].map(questions.badBook),
    bookAdded: [questions.bookAdded(pebblePath)],
    bookChanged: [questions.bookChanged()],
    bookGone: [books.bookGone()],
    noBook: [books.noBook()],
    pageSet: [1, 49].map((page) => questions.pageSet(pebblePath, page, nickname)),
    classPageSet: [0, 1, 12].flatMap((moved) =>
      [0, 1, 3].map((further) => questions.classPageSet(pebblePath, 14, { moved, further })),
    ),
  };
}
