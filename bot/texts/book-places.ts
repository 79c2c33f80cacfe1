import type { ChildProgress, SchoolClass } from '../../db/index.ts';
import { bookInUse, ENOUGH_EVENINGS, type Finish, pagesLeft } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { TITLE_LENGTH, whenDone } from './book-words.ts';
import { shorten } from './quote.ts';
import { bold, lines, name, shortDate, type Text } from './words.ts';

/** A child and when its book in use will be done. */
export interface ChildPlace {
  readonly progress: ChildProgress;
  readonly finish: Finish;
}

/** Where each child is: one page of the class list. */
export function placeList(
  schoolClass: SchoolClass,
  shown: readonly ChildPlace[],
  { page, pages }: { readonly page: number; readonly pages: number },
): Text {
  const dates =
    pages > 1
      ? say('book-places-dates-paged', { page: page + 1, pages })
      : say('book-places-dates');
  return lines(
    bold(say('book-places-title', { title: name(schoolClass.title) })),
    ...shown.map(placeLine),
    shown.length === 0 ? say('book-places-no-children') : dates,
  );
}

function placeLine({ progress: { child, queue }, finish }: ChildPlace): string {
  const who = `${child.number}. ${name(child.nickname)}`;
  const inUse = bookInUse(queue);
  if (!inUse) return say(`book-places-${queue.length === 0 ? 'no-book' : 'all-done'}`, { who });
  const { book, page } = inUse;
  return say('book-places-line', {
    who,
    book: shorten(book.title, TITLE_LENGTH),
    page,
    last: book.lastPage,
    finish: shortFinish(finish),
  });
}

function shortFinish(finish: Finish): string {
  switch (finish.kind) {
    case 'done':
      return whenDone('done');
    case 'too_early':
    case 'standing':
      return say(`book-places-${finish.kind}`);
    case 'finish':
      return whenDone(finish.middle);
  }
}

/** One child's workbooks. `weeks` is how far back its pace reaches. */
export function childPlace({ progress, finish }: ChildPlace, weeks: number): Text {
  const { child, queue, pace } = progress;
  const inUse = bookInUse(queue);
  const next = inUse && queue.slice(queue.indexOf(inUse) + 1).find((each) => pagesLeft(each) > 0);
  const aDay = pace ? Number((pace.pages / pace.evenings).toFixed(1)) : 0;
  return lines(
    bold(say('book-places-child-title', { name: name(child.nickname) })),
    inUse
      ? nextPage(inUse)
      : say(`book-places-child-${queue.length === 0 ? 'no-book' : 'all-done'}`),
    aDay === 0 ? null : say('book-places-pace', { pages: aDay, weeks }),
    ...(inUse ? longFinish(finish) : []),
    next ? say('book-places-then', { book: name(next.book.title), page: next.page }) : null,
    inUse ? say('book-places-counted') : null,
  );
}

function nextPage({ book, page }: ChildProgress['queue'][number]): string {
  return say('book-places-next-page', { book: name(book.title), page, last: book.lastPage });
}

function longFinish(finish: Finish): string[] {
  switch (finish.kind) {
    case 'done':
      return [];
    case 'too_early':
      return [say('book-places-child-too-early', { evenings: ENOUGH_EVENINGS })];
    case 'standing':
      return [say('book-places-child-standing')];
    case 'finish': {
      const { earliest, middle, latest } = finish;
      const when = whenDone(middle);
      if (earliest === latest) return [say('book-places-finish', { when })];
      const from = earliest === null ? say('book-words-never') : shortDate(earliest);
      const until = latest === null ? say('book-places-until-late') : shortDate(latest);
      return [say('book-places-finish-range', { when, from, until })];
    }
  }
}
