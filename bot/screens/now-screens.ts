import type { ListedChild } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import {
  type ClassNow,
  childButton,
  chooseChild,
  classNow,
  digestButton,
} from '../texts/class-now.ts';
import { back } from './class-screens.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { button, rows, type Screen } from './screen.ts';

/** Children on one page, two a row. */
export const CHILDREN_A_PAGE = 14;

/** A class's standing today, and the way to the digest that came last, whose message may show something else by now. */
export function classNowScreen(
  classId: string,
  now: ClassNow,
  lastDigest: SchoolDay | null = null,
): Screen {
  return {
    text: classNow(now),
    buttons: [
      [
        button(BUTTONS.childPages, { kind: 'childPages', classId, page: 0 }),
        button(BUTTONS.weekSoFar, { kind: 'digestOf', classId, day: 'now' }),
      ],
      [
        button(BUTTONS.proposals, { kind: 'proposals', classId, day: 'now' }),
        button(BUTTONS.reports, { kind: 'classReports', classId, span: 0, paper: 0 }),
      ],
      ...(lastDigest === null
        ? []
        : [[button(digestButton(lastDigest), { kind: 'digestOf', classId, day: lastDigest })]]),
      [back(classId)],
    ],
  };
}

/** The children to choose a page from; a sign stands before those who have practised today. */
export function childPagesScreen(
  schoolClass: { readonly id: string; readonly title: string },
  children: readonly ListedChild[],
  practised: ReadonlySet<string>,
  at: number,
): Screen {
  const { id: classId, title } = schoolClass;
  const page = pageOf(children, at, CHILDREN_A_PAGE);
  const buttons = page.shown.map((child) =>
    button(childButton(child, practised.has(child.id)), {
      kind: 'childPage',
      classId,
      number: child.number,
    }),
  );
  return {
    text: chooseChild(title, page),
    buttons: [
      ...rows(buttons, 2),
      ...pageRow(page, (to) => ({ kind: 'childPages', classId, page: to })),
      [button(BUTTONS.back, { kind: 'classNow', classId })],
    ],
  };
}
