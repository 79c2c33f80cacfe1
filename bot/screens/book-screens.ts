import { BOOK_LIMITS, type Book, type ChildProgress, type SchoolClass } from '../../db/index.ts';
import { pagesLeftUntil, projectClass } from '../../drills/index.ts';
import * as texts from '../texts/books.ts';
import { BUTTONS, choiceButton } from '../texts/buttons.ts';
import { back } from './class-screens.ts';
import { type Button, button, type Screen } from './screen.ts';
import { undoButton } from './undo.ts';

/** The class's workbooks in their order. `act` is what was just done and can be taken back. */
export function booksScreen(
  schoolClass: SchoolClass,
  books: readonly Book[],
  withOwn: number,
  act: string | null = null,
): Screen {
  const { id: classId } = schoolClass;
  const isFull = books.length >= BOOK_LIMITS.inLine;
  return {
    text: texts.bookList(schoolClass, books, withOwn),
    buttons: [
      ...undoRow(act),
      ...bookRows(classId, books),
      ...(isFull ? [] : [[button(BUTTONS.addBook, { kind: 'askNewBook', classId })]]),
      [button(BUTTONS.whoIsWhere, { kind: 'bookPlaces', classId, page: 0 })],
      [back(classId)],
    ],
  };
}

/** One workbook of the class, with the progress of every child. */
export function classBookScreen(
  classId: string,
  books: readonly Book[],
  book: Book,
  children: readonly ChildProgress[],
): Screen {
  const place = books.findIndex(({ id }) => id === book.id);
  const inBook = children.flatMap(({ queue, pace, days }) => {
    const at = queue.findIndex((each) => each.book.id === book.id);
    const queued = queue[at];
    return queued ? [{ queued, left: pagesLeftUntil(queue, at), pace, days }] : [];
  });
  // Every child may still go on today, except those whose pages are told: a day more or less does not show in a class's date.
  const days = inBook.map((each) => each.days).sort((one, other) => other.length - one.length)[0];
  const text = texts.classBook(book, {
    place,
    inLine: books.length,
    children: inBook.map(({ queued }) => queued),
    finish: projectClass(inBook, days ?? []),
  });
  return {
    text,
    buttons: [
      ...changeRows(classId, book, place, books.length),
      [button(BUTTONS.setClassPage, { kind: 'askClassPage', classId, book: book.id })],
      [button(BUTTONS.back, { kind: 'books', classId })],
    ],
  };
}

/** One of a child's own workbooks. */
export function ownBookScreen(
  classId: string,
  book: Book,
  { child, queue }: ChildProgress,
): Screen {
  const own = queue.filter((each) => each.book.childId !== null);
  const place = own.findIndex((each) => each.book.id === book.id);
  const queued = own[place] ?? { book, page: book.firstPage };
  return {
    text: texts.ownBook(child.nickname, queued),
    buttons: [
      ...changeRows(classId, book, place, own.length),
      [button(BUTTONS.back, { kind: 'childBooks', classId, child: child.id })],
    ],
  };
}

/** A button for each book of a line. */
export function bookRows(classId: string, books: readonly Book[]): Button[][] {
  return books.map((book, place) => [
    button(texts.bookLabel(book, place), { kind: 'oneBook', classId, book: book.id }),
  ]);
}

/** The row that takes back what was just done. */
export function undoRow(act: string | null): Button[][] {
  return act === null ? [] : [[undoButton(act)]];
}

function changeRows(classId: string, book: Book, place: number, inLine: number): Button[][] {
  const about = { classId, book: book.id };
  const paces = Array.from({ length: BOOK_LIMITS.pagesADay }, (_, index) => {
    const pages = index + 1;
    const label = choiceButton(String(pages), pages === book.pagesADay);
    return button(label, { kind: 'bookPace', ...about, pages });
  });
  const moves = [
    ...(place > 0
      ? [button(BUTTONS.bookEarlier, { kind: 'moveBook', ...about, to: place - 1 })]
      : []),
    ...(place < inLine - 1
      ? [button(BUTTONS.bookLater, { kind: 'moveBook', ...about, to: place + 1 })]
      : []),
  ];
  return [
    paces,
    ...(moves.length > 0 ? [moves] : []),
    [
      button(BUTTONS.changeBook, { kind: 'askBook', ...about }),
      button(BUTTONS.putAway, { kind: 'putAwayBook', ...about }),
    ],
  ];
}
