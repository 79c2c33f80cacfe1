import type { ListedChild, RosterChild, SchoolClass } from '../../db/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/children.ts';
import { askToMakeLinks } from '../texts/roster.ts';
import { lines, name } from '../texts/words.ts';
import { back } from './class-screens.ts';
import { ownWayButton } from './own-way-screen.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { type Button, button, rows, type Screen } from './screen.ts';
import { undoButton } from './undo.ts';

/** Children on one page of the list, two in a row; with what else there is that makes ten rows. */
const CHILDREN_A_PAGE = 12;
/** Archived children and classes on one page, one in a row. */
const ROWS_A_PAGE = 8;

/** The class's list with who has joined; `at` is the page. */
export function childrenScreen(
  schoolClass: SchoolClass,
  children: readonly ListedChild[],
  at: number,
  archived: number,
): Screen {
  const { id: classId } = schoolClass;
  const { shown, ...pages } = pageOf(children, at, CHILDREN_A_PAGE);
  const add = button(BUTTONS.addChildren, { kind: 'askFor', classId, what: 'roster' });
  const away = button(BUTTONS.archivedChildren, { kind: 'archivedChildren', classId, page: 0 });
  const links = button(BUTTONS.missingLinks, { kind: 'askLinks', classId });
  return {
    text: texts.childList(schoolClass, children),
    buttons: [
      ...rows(
        shown.map((child) =>
          button(texts.childLabel(child), { kind: 'child', classId, number: child.number }),
        ),
        2,
      ),
      ...pageRow(pages, (page) => ({ kind: 'children', classId, page })),
      archived > 0 ? [add, away] : [add],
      ...(children.length > 0 ? [[links]] : []),
      [back(classId)],
    ],
  };
}

/** On which page of the list a child stands. */
export function pageOfChild(children: readonly ListedChild[], number: number): number {
  const place = children.findIndex((child) => child.number === number);
  return Math.max(0, Math.floor(place / CHILDREN_A_PAGE));
}

/** One child and what can be done for it. `page` is where it stands on the list. */
export function childScreen(schoolClass: SchoolClass, child: ListedChild, page: number): Screen {
  const at = { classId: schoolClass.id, number: child.number };
  return {
    text: texts.childHome(schoolClass, child),
    buttons: [
      [
        button(BUTTONS.renameChild, { kind: 'renameChild', ...at }),
        button(BUTTONS.newLink, { kind: 'askChildLink', ...at }),
      ],
      [
        button(BUTTONS.childPage, { kind: 'childPage', ...at }),
        ownWayButton(schoolClass.id, child.number),
      ],
      [
        button(BUTTONS.moveChild, { kind: 'moveChild', ...at, page: 0 }),
        button(BUTTONS.archiveChild, { kind: 'archiveChild', ...at }),
      ],
      [toChildren(schoolClass.id, page)],
    ],
  };
}

/** Which of the teacher's other classes a child moves to. */
export function moveScreen(
  classId: string,
  child: RosterChild,
  others: readonly SchoolClass[],
  at: number,
): Screen {
  const { number } = child;
  const { shown, ...pages } = pageOf(others, at, ROWS_A_PAGE);
  return {
    text: texts.askWhichClass(child, others.length),
    buttons: [
      ...shown.map((to) => [
        button(name(to.title), { kind: 'moveChildTo', classId, number, to: to.id }),
      ]),
      ...pageRow(pages, (page) => ({ kind: 'moveChild', classId, number, page })),
      [button(BUTTONS.back, { kind: 'child', classId, number })],
    ],
  };
}

/** What is shown after a child has left the list, with the way to undo it and back to the list. */
export function goneScreen(classId: string, text: Screen['text'], actId: string | null): Screen {
  return {
    text,
    buttons: [...(actId === null ? [] : [[undoButton(actId)]]), [toChildren(classId)]],
  };
}

/** The archived children; a tap brings one back. `news` is what the last tap did. */
export function archivedScreen(
  schoolClass: SchoolClass,
  archived: readonly RosterChild[],
  at: number,
  news: string | null = null,
): Screen {
  const { id: classId } = schoolClass;
  const { shown, ...pages } = pageOf(archived, at, ROWS_A_PAGE);
  const list = texts.archivedList(schoolClass, archived);
  return {
    text: news === null ? list : lines(news, '', list),
    buttons: [
      ...shown.map((child) => [
        button(texts.numbered(child), { kind: 'bringBack', classId, number: child.number }),
      ]),
      ...pageRow(pages, (page) => ({ kind: 'archivedChildren', classId, page })),
      [toChildren(classId)],
    ],
  };
}

/** Asks before links are made for the `missing` children without a helper. `slips` is how many the class was ever given. */
export function makeLinksScreen(classId: string, missing: number, slips: number): Screen {
  const make = button(BUTTONS.makeLinks, { kind: 'makeLinks', classId, slips: String(slips) });
  return {
    text: askToMakeLinks(missing),
    buttons: [...(missing > 0 ? [[make]] : []), [toChildren(classId)]],
  };
}

/** Asks before a new link is made for one child. `slips` is how many the class was ever given. */
export function askLinkScreen(classId: string, child: RosterChild, slips: number): Screen {
  const { number } = child;
  return {
    text: texts.askToMakeLink(child),
    buttons: [
      [button(BUTTONS.makeLink, { kind: 'childLink', classId, number, slips: String(slips) })],
      [button(BUTTONS.back, { kind: 'child', classId, number })],
    ],
  };
}

/** The way back to the list. */
export function toChildren(classId: string, page = 0): Button {
  return button(BUTTONS.back, { kind: 'children', classId, page });
}
