import type { KeptAct, Undone } from '../../db/index.ts';
import * as texts from '../texts/acts.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { lines } from '../texts/words.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { type Button, button, type Screen } from './screen.ts';

/** Acts on one page of the list. */
const ACTS_A_PAGE = 8;

/** Takes back one act. */
export function undoButton(actId: string): Button {
  return button(BUTTONS.undo, { kind: 'undo', act: actId });
}

/** Everything that can be taken back, newest first, each by a tap. */
export function undoListScreen(acts: readonly KeptAct[], at: number): Screen {
  const { shown, page, pages } = pageOf(acts, at, ACTS_A_PAGE);
  const several = new Set(acts.map(({ classId }) => classId)).size > 1;
  const newest = acts[0];
  return {
    text: texts.actsToUndo(acts, page, pages),
    buttons: [
      ...shown.map((act) => [button(texts.actButton(act, several), { kind: 'undo', act: act.id })]),
      ...pageRow({ page, pages }, (to) => ({ kind: 'undoList', page: to })),
      ...(newest ? [[wayBack(newest, several)]] : []),
    ],
  };
}

/** To the class that all acts are about; to the choice of classes when there are several, or when it is archived. */
function wayBack(newest: KeptAct, several: boolean): Button {
  return several || newest.kind === 'classArchived'
    ? button(BUTTONS.classes, { kind: 'classes', page: 0 })
    : button(BUTTONS.back, { kind: 'openClass', classId: newest.classId });
}

/** A class's home under one line that says what was taken back. */
export function afterUndo(home: Screen, undone: Undone, nickname: string | null): Screen {
  return { ...home, text: lines(texts.takenBack(undone, nickname), '', home.text) };
}
