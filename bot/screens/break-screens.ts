import type { ClassBreak, SchoolClass } from '../../db/index.ts';
import * as texts from '../texts/breaks.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { lines } from '../texts/words.ts';
import { back } from './class-screens.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { type Button, button, type Screen } from './screen.ts';
import { undoButton } from './undo.ts';

/** Breaks on one page: with its heading and its last line, less than ten lines. */
const BREAKS_A_PAGE = 6;

/** What was just done to the breaks, and the act that takes it back. */
export interface BreakNews {
  readonly said: string;
  readonly actId: string | null;
}

/** Breaks ahead, a page at a time; a tap on one removes it. */
export function breaksScreen(
  schoolClass: SchoolClass,
  breaks: readonly ClassBreak[],
  at = 0,
  news: BreakNews | null = null,
): Screen {
  const { id: classId } = schoolClass;
  const { shown, page, pages } = pageOf(breaks, at, BREAKS_A_PAGE);
  const list = texts.breakList(schoolClass, shown, { page, pages });
  return {
    text: news ? lines(news.said, list) : list,
    buttons: [
      ...shown.map((each, index) => [
        button(texts.breakButton(each), {
          kind: 'removeBreak',
          classId,
          index: page * BREAKS_A_PAGE + index,
          first: each.first,
        }),
      ]),
      ...pageRow({ page, pages }, (to) => ({ kind: 'breaksAt', classId, page: to })),
      ...(news?.actId ? [[undoButton(news.actId)]] : []),
      [
        addBreakButton(classId, BUTTONS.addBreak),
        button(BUTTONS.holidays, { kind: 'holidays', classId, ...ANY_HOLIDAYS }),
      ],
      [back(classId)],
    ],
  };
}

/** Opens the list of holidays where it begins: at the class's own place, from today, with everything ticked. */
export const ANY_HOLIDAYS = { place: 'own', from: '0', off: '0', page: 0 } as const;

/** Asks for a break to be typed. */
export function addBreakButton(classId: string, label: string): Button {
  return button(label, { kind: 'askFor', classId, what: 'break' });
}

/** Under a break that was read back. */
export function afterBreak(classId: string, actId: string | null): Screen['buttons'] {
  return [
    ...(actId ? [[undoButton(actId)]] : []),
    [
      addBreakButton(classId, BUTTONS.moreBreaks),
      button(BUTTONS.breaks, { kind: 'breaks', classId }),
    ],
    [back(classId)],
  ];
}
