import type { ChildProgress, SchoolClass } from '../../db/index.ts';
import { bookInUse, type Finish, pagesLeft } from '../../drills/index.ts';
import { ENOUGH, TITLE_LENGTH, whenDone } from './book-words.ts';
import { shorten } from './quote.ts';
import { bold, count, lines, name, shortDate, type Text } from './words.ts';

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
  const paged = pages > 1 ? `Page ${page + 1} of ${pages}. ` : '';
  return lines(
    bold(`${name(schoolClass.title)}: who is where`),
    ...shown.map(placeLine),
    shown.length === 0
      ? 'No children yet.'
      : `${paged}Dates say when it is done, at the child’s own pace.`,
  );
}

function placeLine({ progress: { child, queue }, finish }: ChildPlace): string {
  const who = `${child.number}. ${name(child.nickname)}`;
  const inUse = bookInUse(queue);
  if (!inUse) return `${who}: ${queue.length === 0 ? 'no workbook' : 'all done'}`;
  const { book, page } = inUse;
  const place = `${shorten(book.title, TITLE_LENGTH)}, page ${page} of ${book.lastPage}`;
  return `${who}: ${place}, ${shortFinish(finish)}`;
}

function shortFinish(finish: Finish): string {
  switch (finish.kind) {
    case 'done':
      return 'done';
    case 'too_early':
      return 'too early to say';
    case 'standing':
      return 'no pages lately';
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
    bold(`${name(child.nickname)}: workbooks`),
    inUse
      ? `${name(inUse.book.title)}: page ${inUse.page} of ${inUse.book.lastPage} is next.`
      : null,
    inUse ? null : queue.length === 0 ? 'None. Evenings ask for no pages.' : 'All are done.',
    aDay === 0 ? null : `${count(aDay, 'page', 'pages')} an evening in the last ${weeks} weeks.`,
    ...(inUse ? longFinish(finish) : []),
    next ? `Then ${name(next.book.title)}, from page ${next.page}.` : null,
    inUse ? 'Pages are what the helpers tapped; where nobody did, none are counted.' : null,
  );
}

function longFinish(finish: Finish): string[] {
  switch (finish.kind) {
    case 'done':
      return [];
    case 'too_early':
      return [`Too early to say when it is done: it takes ${ENOUGH}.`];
    case 'standing':
      return ['No pages lately, so there is no date.'];
    case 'finish': {
      const { earliest, middle, latest } = finish;
      if (earliest === latest) return [`Done ${whenDone(middle)}.`];
      const from = earliest === null ? 'in more than a year' : shortDate(earliest);
      const until = latest === null ? 'more than a year' : shortDate(latest);
      return [`Done ${whenDone(middle)}; in 8 cases of 10 from ${from} to ${until}.`];
    }
  }
}
