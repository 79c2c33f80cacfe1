import {
  AppError,
  childrenGivenSlips,
  countSlips,
  getClass,
  keepSlips,
  type ListedChild,
  listChildren,
  type TeacherScope,
  writeSlips,
} from '../../db/index.ts';
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

/** The children to be given links by a tap, and how many slips the class was ever given when its button was shown. */
interface LinkWish {
  readonly children: readonly ListedChild[];
  readonly slips: string;
}

/**
 * Sends new links to the children that were given none since the button was shown: a second list would kill the first, and
 * look the same.
 *
 * The slips of a message come into force after it is sent. One that surely did not arrive leaves the earlier links of its
 * children as they were, and the tap, handled again, makes new ones for these children alone.
 */
async function sendFresh(tap: Tap, scope: TeacherScope, wish: LinkWish): Promise<void> {
  const { deps, userId } = tap;
  const waiting = await stillWithout(tap, scope, wish);
  if (!waiting) return tap.answer(LINKS_MADE, 'alert');
  await tap.answer();
  const childIds = waiting.map((child) => child.id);
  const written = await writeSlips(deps.store, scope, childIds);
  await sendLinks(deps, userId, written, (slips) =>
    keepSlips(deps.store, scope, { slips, now: deps.clock.now() }),
  );
}

/** The children of a wish that were given no link since; null when all were. */
async function stillWithout(
  tap: Tap,
  scope: TeacherScope,
  wish: LinkWish,
): Promise<readonly ListedChild[] | null> {
  const { store } = tap.deps;
  if (wish.slips === String(await countSlips(store, scope))) return wish.children;
  const given = await childrenGivenSlips(store, scope, Number(wish.slips));
  // Slips are never taken away, so a count that the class has not reached is forged.
  if (given.size === 0) return null;
  const waiting = wish.children.filter((child) => !given.has(child.id));
  return waiting.length > 0 ? waiting : null;
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
