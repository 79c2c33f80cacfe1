import type { Book } from '../../db/index.ts';
import { quote } from './quote.ts';
import { count, lines, name, pageRange, type Text } from './words.ts';

const EXAMPLE = 'Pebble Path 1-48 2';
const SHAPE = 'the title, its first and last page, and the pages a day';

/** The question for a new workbook; `nickname` is that of the one child it is for. */
export function askNewBook(nickname: string | null): Text {
  const whose = nickname === null ? 'the next workbook' : `${name(nickname)}’s own workbook`;
  return lines(`Send ${whose}: ${SHAPE}, like this:`, EXAMPLE);
}

/** The question for a changed workbook, with what it is now, to be copied. */
export function askChange(book: Book): Text {
  return lines(`Send it anew: ${SHAPE}. Now it is:`, asTyped(book));
}

/** A workbook as it is typed. */
function asTyped({ title, firstPage, lastPage, pagesADay }: Book): string {
  return `${name(title)} ${firstPage}-${lastPage} ${pagesADay}`;
}

/** The question where a child is, or with null the class. */
export function askPage(book: Book, nickname: string | null): Text {
  const whose = nickname === null ? 'the class’s' : `${name(nickname)}’s`;
  return lines(
    `Which page of ${name(book.title)} is ${whose} next? ${range(book)}`,
    nickname === null ? 'Children who are further on stay where they are.' : null,
  );
}

function range({ firstPage, lastPage }: Book): string {
  return `Send a page from ${firstPage} to ${lastPage}, or “done”.`;
}

/** A page that could not be read or lies outside the book. */
export function badPage(value: string, book: Book): Text {
  return lines(`${quote(value)} is no page of ${name(book.title)}. ${range(book)}`);
}

/** A workbook that could not be read. */
export function badBook(value: string): Text {
  return lines(
    `I could not read ${quote(value)} as a workbook. Send ${SHAPE}, like this:`,
    EXAMPLE,
  );
}

/** A workbook was added. */
export function bookAdded({ title, firstPage, lastPage, pagesADay }: Book): Text {
  return lines(
    `${name(title)} is in line: ${pageRange(firstPage, lastPage)}, ${pagesADay} a day. It counts from the next evening.`,
  );
}

/** A workbook was changed, or was the same already. */
export function bookChanged(): Text {
  return lines('Saved. It counts from the next evening; nobody loses a page.');
}

/** Where a child is was said. */
export function pageSet(book: Book, page: number, nickname: string): Text {
  return lines(`${name(nickname)}: ${reached(book, page)}. It counts from the next evening.`);
}

/** Where the class is was said. */
export function classPageSet(
  book: Book,
  page: number,
  { moved, further }: { readonly moved: number; readonly further: number },
): Text {
  const stay = further === 1 ? 'stays there' : 'stay there';
  return lines(
    moved === 0
      ? `Every child was there already: ${reached(book, page)}.`
      : `${count(moved, 'child', 'children')}: ${reached(book, page)}. It counts from the next evening.`,
    further > 0 ? `${count(further, 'child was', 'children were')} further on and ${stay}.` : null,
  );
}

function reached(book: Book, page: number): string {
  const title = name(book.title);
  return page > book.lastPage ? `${title} is done` : `page ${page} of ${title} is next`;
}
