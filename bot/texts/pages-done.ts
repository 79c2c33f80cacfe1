import type { EveningView } from '../../db/index.ts';
import { say } from '../language/index.ts';
import { TITLE_LENGTH } from './book-words.ts';
import { shorten } from './quote.ts';

/** The pages done, more than planned praised and fewer taken as they are, and what comes after the book's last page. */
export function pagesLines({ book, pages }: EveningView): string[] {
  if (!book || pages === null) return [];
  // A title stands here up to three times: whole ones would not fit beside a picture.
  const title = shorten(book.title, TITLE_LENGTH);
  const more = pages - (book.to - book.from + 1);
  const first =
    more > 0
      ? say('pages-done-more', { title, pages, more })
      : say('pages-done-count', { title, pages });
  if (book.from + pages <= book.last) return [first];
  const { next } = book;
  if (!next) return [first, say('pages-done-book', { title })];
  const { from: page } = next;
  return [first, say('pages-done-next', { title, next: shorten(next.title, TITLE_LENGTH), page })];
}
