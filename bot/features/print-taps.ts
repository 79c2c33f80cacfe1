import {
  countSlips,
  getClass,
  listChildren,
  localTimeAt,
  type TeacherScope,
} from '../../db/index.ts';
import { type PaperSize, squarePages } from '../paper/index.ts';
import { PAPER_CHOICE, printScreen } from '../screens/print-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { staleButton } from '../texts/errors.ts';
import {
  cardsSent,
  noDays,
  noPlan,
  noSlips,
  sheetsSent,
  slipsSent,
  squaresSent,
} from '../texts/print.ts';
import { sendFresh, withoutHelper } from './fresh-slips.ts';
import {
  cardPapers,
  lastDayOfSlips,
  type PaperOrder,
  sheetPapers,
  slipPapers,
} from './print-papers.ts';
import { sendPaper } from './send-paper.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';

/** Everything a teacher can have printed. */
export const printTaps: TapHandlers<
  'print' | 'printSlips' | 'printCards' | 'printSheets' | 'printSquares'
> = {
  print: (tap, action) =>
    withOrder(tap, action, async (scope, { paper }) => {
      await tap.answer();
      await tap.show(await readPrint(tap, scope, paper));
    }),
  printSlips: (tap, action) =>
    withOrder(tap, action, (scope, order) => sendSlips(tap, scope, order, action.slips)),
  printCards: (tap, action) =>
    withOrder(tap, action, async (scope, order) => {
      const pages = await cardPapers(tap.deps.store, scope, order);
      if (!pages) return tap.answer(noPlan(), 'alert');
      await tap.answer();
      await sendPaper(tap.deps, tap.userId, order, { what: 'cards', pages, say: cardsSent() });
    }),
  printSheets: (tap, action) =>
    withOrder(tap, action, (scope, order) => sendSheets(tap, scope, order)),
  printSquares: (tap, action) =>
    withOrder(tap, action, async (_scope, order) => {
      await tap.answer();
      const pages = squarePages({ firsts: [1, 101], paper: order.paper });
      const what = 'number-squares';
      await sendPaper(tap.deps, tap.userId, order, { what, pages, say: squaresSent() });
    }),
};

/** Finds the class of a tap and what its paper is made from. */
async function withOrder(
  tap: Tap,
  { classId, paper }: { readonly classId: string; readonly paper: number },
  print: (scope: TeacherScope, order: PaperOrder) => Promise<void>,
): Promise<void> {
  const { store, clock } = tap.deps;
  const scope = await teacherScope(store, tap.userId, classId);
  const schoolClass = await getClass(store, scope);
  const size = PAPER_CHOICE[paper];
  if (!size) return tap.answer(staleButton(), 'alert');
  const { day: today } = localTimeAt(clock.now(), schoolClass.zone);
  await print(scope, { schoolClass, paper: size, today });
}

/** Makes new links as a list of links would, and sends them as slips; a second tap makes no second set. */
async function sendSlips(
  tap: Tap,
  scope: TeacherScope,
  order: PaperOrder,
  slips: string,
): Promise<void> {
  const { deps, userId } = tap;
  const linkOf = await deps.linksOf(scope.classId);
  const children = await withoutHelper(tap, scope);
  if (children.length === 0) return tap.answer(noSlips(), 'alert');
  await sendFresh(tap, scope, { children, slips }, async (written, sent) => {
    const until = lastDayOfSlips(order.schoolClass, deps.clock.now());
    const pages = slipPapers(order, written, { until, linkOf });
    const say = slipsSent(written.length, until);
    await sendPaper(deps, userId, order, { what: 'join-slips', pages, say });
    await sent(written);
  });
  await tap.show(await readPrint(tap, scope, order.paper));
}

/** Sheets for the children whose families get no messages: the others have theirs on the phone. */
async function sendSheets(tap: Tap, scope: TeacherScope, order: PaperOrder): Promise<void> {
  const listed = await listChildren(tap.deps.store, scope);
  const children = listed.filter((child) => child.reachable === 0);
  const pages = await sheetPapers(tap.deps.store, scope, { ...order, children });
  if (pages === 'no_plan') return tap.answer(noPlan(), 'alert');
  if (pages === 'no_days') return tap.answer(noDays(), 'alert');
  await tap.answer();
  const say = sheetsSent(children.length);
  await sendPaper(tap.deps, tap.userId, order, { what: 'practice', pages, say });
}

async function readPrint(tap: Tap, scope: TeacherScope, paper: PaperSize): Promise<Screen> {
  const { store } = tap.deps;
  return printScreen({
    schoolClass: await getClass(store, scope),
    children: await listChildren(store, scope),
    slips: await countSlips(store, scope),
    paper,
  });
}
