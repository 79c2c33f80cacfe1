import { countSlips, getChild, type TeacherScope } from '../../db/index.ts';
import { askLinkScreen, makeLinksScreen } from '../screens/children-screens.ts';
import { readChild, readChildren } from './children-taps.ts';
import { type SlipWish, sendFresh, withoutHelper } from './fresh-slips.ts';
import { sendLinks } from './send-links.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** Join links: for all children that nobody helps, or for one. */
export const linkTaps: TapHandlers<'askLinks' | 'makeLinks' | 'askChildLink' | 'childLink'> = {
  askLinks: (tap, { classId }) =>
    turn(tap, classId, async (scope) => {
      const missing = await withoutHelper(tap, scope);
      return makeLinksScreen(classId, missing.length, await countSlips(tap.deps.store, scope));
    }),
  makeLinks: (tap, { classId, slips }) =>
    turn(tap, classId, async (scope) => {
      await sendList(tap, scope, { children: await withoutHelper(tap, scope), slips });
      return readChildren(tap, scope, 0);
    }),
  askChildLink: (tap, { classId, number }) =>
    turn(tap, classId, async (scope) => {
      const { store } = tap.deps;
      const child = await getChild(store, scope, number);
      return askLinkScreen(classId, child, await countSlips(store, scope));
    }),
  childLink: (tap, { classId, number, slips }) =>
    turn(tap, classId, async (scope) => {
      const child = await getChild(tap.deps.store, scope, number);
      await sendList(tap, scope, { children: [child], slips });
      return readChild(tap, scope, number);
    }),
};

async function sendList(tap: Tap, scope: TeacherScope, wish: SlipWish): Promise<void> {
  // A class may belong to another bot than the one its teacher writes with.
  const deps = { ...tap.deps, linkOf: await tap.deps.linksOf(scope.classId) };
  await sendFresh(tap, scope, wish, (slips, sent) => sendLinks(deps, tap.userId, slips, sent));
}
