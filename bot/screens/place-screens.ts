import { type ChildProgress, PACE_DAYS, type SchoolClass } from '../../db/index.ts';
import { bookInUse, pagesLeft, projectFinish } from '../../drills/index.ts';
import * as texts from '../texts/book-places.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { name } from '../texts/words.ts';
import { bookRows } from './book-screens.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { button, rows, type Screen } from './screen.ts';

/** Children on one page of the list: with its heading and its last line, less than ten lines. */
const CHILDREN_A_PAGE = 7;

/** Where each child is in its books, a page at a time. */
export function placesScreen(
  schoolClass: SchoolClass,
  children: readonly ChildProgress[],
  at: number,
): Screen {
  const { id: classId } = schoolClass;
  const { shown, page, pages } = pageOf(children, at, CHILDREN_A_PAGE);
  const buttons = shown.map(({ child }) =>
    button(`${child.number}. ${name(child.nickname)}`, {
      kind: 'childBooks',
      classId,
      child: child.id,
    }),
  );
  return {
    text: texts.placeList(schoolClass, shown.map(placed), { page, pages }),
    buttons: [
      ...rows(buttons, 2),
      ...pageRow({ page, pages }, (to) => ({ kind: 'bookPlaces', classId, page: to })),
      [button(BUTTONS.back, { kind: 'books', classId })],
    ],
  };
}

/** One child's books: the one in use, its own, and when it will be done. `place` is its place in the class list. */
export function childBooksScreen(
  classId: string,
  progress: ChildProgress,
  place: number,
  undo: Screen['buttons'] = [],
): Screen {
  const { child, queue } = progress;
  const own = queue.map(({ book }) => book).filter(({ childId }) => childId !== null);
  const about = { classId, child: child.id };
  const page = Math.floor(place / CHILDREN_A_PAGE);
  return {
    text: texts.childPlace(placed(progress), PACE_DAYS / 7),
    buttons: [
      ...undo,
      ...bookRows(classId, own),
      ...(queue.length > 0
        ? [[button(BUTTONS.setChildPage, { kind: 'askChildPage', ...about })]]
        : []),
      [button(BUTTONS.addOwnBook, { kind: 'askOwnBook', ...about })],
      [button(BUTTONS.back, { kind: 'bookPlaces', classId, page })],
    ],
  };
}

/** A child with the finish of the book in use. */
export function placed(progress: ChildProgress): texts.ChildPlace {
  const { queue, pace, days } = progress;
  const inUse = bookInUse(queue);
  const left = inUse ? pagesLeft(inUse) : 0;
  return { progress, finish: projectFinish({ left, pace, days }) };
}
