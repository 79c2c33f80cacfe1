import {
  AppError,
  countSlips,
  getClass,
  keepSlips,
  type ListedChild,
  listChildren,
  type TeacherScope,
  writeSlips,
} from '../../db/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import { childrenScreen, makeLinksScreen, pickChildScreen } from '../screens/class-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { LINKS_MADE } from '../texts/roster.ts';
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
      await sendFresh(tap, scope, { children: await withoutHelper(tap, scope), slips });
      return readChildren(tap, scope);
    }),
  pickChild: (tap, { classId }) => turn(tap, classId, (scope) => readPick(tap, scope)),
  childLink: (tap, { classId, number, slips }) =>
    turn(tap, classId, async (scope) => {
      const listed = await listChildren(tap.deps.store, scope);
      const children = listed.filter((child) => child.number === number);
      if (children.length === 0) throw new AppError('not_found', 'child');
      await sendFresh(tap, scope, { children, slips });
      return readPick(tap, scope);
    }),
};

/**
 * Sends new links, unless links were made since the button was shown: a second list would kill the first, and look the same.
 *
 * The slips come into force after they are sent. A list that surely did not arrive leaves the earlier links as they were, and
 * the tap, handled again, makes another.
 */
async function sendFresh(
  tap: Tap,
  scope: TeacherScope,
  wish: { children: readonly ListedChild[]; slips: string },
): Promise<void> {
  const { deps, userId } = tap;
  if (wish.slips !== String(await countSlips(deps.store, scope))) {
    return tap.answer(LINKS_MADE, 'alert');
  }
  await tap.answer();
  const childIds = wish.children.map((child) => child.id);
  const slips = await writeSlips(deps.store, scope, childIds);
  const keep = () => keepSlips(deps.store, scope, { slips, now: deps.clock.now() });
  try {
    await sendLinks(deps, userId, slips);
  } catch (error) {
    // The list may lie in the chat all the same, and then its links are handed out.
    if (apiProblem(error).kind === 'unknown') await keep();
    throw error;
  }
  await keep();
}

async function withoutHelper(tap: Tap, scope: TeacherScope): Promise<ListedChild[]> {
  const children = await listChildren(tap.deps.store, scope);
  return children.filter((child) => child.helpers === 0);
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
