import { AppError, countSlips, getClass, listChildren, type TeacherScope } from '../../db/index.ts';
import { childrenScreen, makeLinksScreen, pickChildScreen } from '../screens/class-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { type SlipWish, sendFresh, withoutHelper } from './fresh-slips.ts';
import { sendLinks } from './send-links.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** Everything a teacher can tap about the children of a class and their join links. */
export const linkTaps: TapHandlers<
  'children' | 'askLinks' | 'makeLinks' | 'pickChild' | 'childLink'
> = {
  children: (tap, { classId }) => turn(tap, classId, (scope) => readChildren(tap, scope)),
  askLinks: (tap, { classId }) =>
    turn(tap, classId, async (scope) => {
      const missing = await withoutHelper(tap, scope);
      return makeLinksScreen(classId, missing.length, await countSlips(tap.deps.store, scope));
    }),
  makeLinks: (tap, { classId, slips }) =>
    turn(tap, classId, async (scope) => {
      await sendList(tap, scope, { children: await withoutHelper(tap, scope), slips });
      return readChildren(tap, scope);
    }),
  pickChild: (tap, { classId }) => turn(tap, classId, (scope) => readPick(tap, scope)),
  childLink: (tap, { classId, number, slips }) =>
    turn(tap, classId, async (scope) => {
      const listed = await listChildren(tap.deps.store, scope);
      const children = listed.filter((child) => child.number === number);
      if (children.length === 0) throw new AppError('not_found', 'child');
      await sendList(tap, scope, { children, slips });
      return readPick(tap, scope);
    }),
};

async function sendList(tap: Tap, scope: TeacherScope, wish: SlipWish): Promise<void> {
  await sendFresh(tap, scope, wish, (slips, sent) => sendLinks(tap.deps, tap.userId, slips, sent));
}

async function readChildren(tap: Tap, scope: TeacherScope): Promise<Screen> {
  const { store } = tap.deps;
  return childrenScreen(await getClass(store, scope), await listChildren(store, scope));
}

async function readPick(tap: Tap, scope: TeacherScope): Promise<Screen> {
  const { store } = tap.deps;
  const children = await listChildren(store, scope);
  return pickChildScreen(scope.classId, children, await countSlips(store, scope));
}
