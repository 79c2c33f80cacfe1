import type { ChildStand } from '../../db/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { fewerList, whoOf } from '../texts/fewer.ts';
import { keepButton, PACE_BUTTONS } from '../texts/pace-buttons.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { type Button, button, type Screen } from './screen.ts';

/** A screen has under ten lines. */
const CHILDREN_A_PAGE = 6;

/** A class as this screen needs it. */
interface Of {
  readonly id: string;
  readonly title: string;
}

/** The children whose drill does not simply come every school day, and what a teacher can do about it. */
export function fewerScreen(
  { id: classId, title }: Of,
  stands: readonly ChildStand[],
  at: number,
): Screen {
  const page = pageOf(stands, at, CHILDREN_A_PAGE);
  return {
    text: fewerList(title, page),
    buttons: [
      ...page.shown.flatMap(({ stand, ...child }) => {
        // What a family chose is the family's.
        if (stand.kind === 'paused' || stand.kind === 'days') return [];
        const isKept = stand.kind === 'kept';
        const on = isKept ? 0 : 1;
        const tapped = { classId, number: child.number, on, page: page.page };
        return [[button(keepButton(whoOf(child), isKept), { kind: 'keepDaily', ...tapped })]];
      }),
      ...pageRow(page, (to) => ({ kind: 'fewerEvenings', classId, page: to })),
      [button(BUTTONS.back, { kind: 'classNow', classId })],
    ],
  };
}

/** The way to it. */
export function fewerButton(classId: string): Button {
  return button(PACE_BUTTONS.fewer, { kind: 'fewerEvenings', classId, page: 0 });
}
