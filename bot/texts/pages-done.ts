import type { EveningView } from '../../db/index.ts';
import { TITLE_LENGTH } from './book-words.ts';
import { shorten } from './quote.ts';
import { count } from './words.ts';

/** The pages done, more than planned praised and fewer taken as they are, and what comes after the book's last page. */
export function pagesLines({ book, pages }: EveningView): string[] {
  if (!book || pages === null) return [];
  // A title stands here up to three times: whole ones would not fit beside a picture.
  const title = shorten(book.title, TITLE_LENGTH);
  const done = `${title}: ${count(pages, 'page', 'pages')} done`;
  const more = pages - (book.to - book.from + 1);
  const praise = `, ${more === 1 ? 'one' : more} more than planned. Well done!`;
  const first = more > 0 ? done + praise : done;
  if (book.from + pages <= book.last) return [first];
  const { next } = book;
  const after = next ? ` Next: ${shorten(next.title, TITLE_LENGTH)}, from page ${next.from}.` : '';
  return [first, `${title} is done!${after}`];
}
