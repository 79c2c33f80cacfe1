import type { Book } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { quote } from './quote.ts';
import { lines, name, pageRange, type Text } from './words.ts';

/** The question for a new workbook; `nickname` is that of the one child it is for. */
export function askNewBook(nickname: string | null): Text {
  return lines(
    nickname === null
      ? say('book-questions-new')
      : say('book-questions-new-own', { name: name(nickname) }),
    say('book-questions-example'),
  );
}

/** The question for a changed workbook, with what it is now, to be copied. */
export function askChange(book: Book): Text {
  return lines(say('book-questions-change'), asTyped(book));
}

/** A workbook as it is typed. */
function asTyped({ title, firstPage, lastPage, pagesADay }: Book): string {
  return `${name(title)} ${firstPage}-${lastPage} ${pagesADay}`;
}

/** The question where a child is, or with null the class. */
export function askPage(book: Book, nickname: string | null): Text {
  const about = { book: name(book.title), range: range(book) };
  if (nickname === null) {
    return lines(say('book-questions-page-of-class', about), say('book-questions-further'));
  }
  return lines(say('book-questions-page-of-child', { ...about, name: name(nickname) }));
}

function range({ firstPage, lastPage }: Book): string {
  return say('book-questions-range', { first: firstPage, last: lastPage });
}

/** A page that could not be read or lies outside the book. */
export function badPage(value: string, book: Book): Text {
  const about = { book: name(book.title), range: range(book) };
  return lines(say('book-questions-bad-page', { ...about, typed: quote(value) }));
}

/** A workbook that could not be read. */
export function badBook(value: string): Text {
  return lines(
    say('book-questions-bad-book', { typed: quote(value) }),
    say('book-questions-example'),
  );
}

/** A workbook was added. */
export function bookAdded({ title, firstPage, lastPage, pagesADay }: Book): Text {
  return lines(
    say('book-questions-added', {
      book: name(title),
      pages: pageRange(firstPage, lastPage),
      aDay: pagesADay,
    }),
  );
}

/** A workbook was changed, or was the same already. */
export function bookChanged(): Text {
  return lines(say('book-questions-changed'));
}

/** Where a child is was said. */
export function pageSet(book: Book, page: number, nickname: string): Text {
  return lines(say('book-questions-set', { name: name(nickname), reached: reached(book, page) }));
}

/** Where the class is was said. */
export function classPageSet(
  book: Book,
  page: number,
  { moved, further }: { readonly moved: number; readonly further: number },
): Text {
  const there = { reached: reached(book, page) };
  return lines(
    moved === 0
      ? say('book-questions-set-already', there)
      : say('book-questions-set-class', { ...there, moved }),
    further > 0 ? say('book-questions-stay', { further }) : null,
  );
}

function reached(book: Book, page: number): string {
  const title = { book: name(book.title) };
  return page > book.lastPage
    ? say('book-questions-reached-end', title)
    : say('book-questions-reached', { ...title, page });
}
