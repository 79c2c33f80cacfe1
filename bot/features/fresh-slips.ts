import {
  childrenGivenSlips,
  countSlips,
  type IssuedSlip,
  keepSlips,
  type ListedChild,
  listChildren,
  type TeacherScope,
  writeSlips,
} from '../../db/index.ts';
import { linksMade } from '../texts/roster.ts';
import type { Tap } from './tap.ts';

/** The children to be given links by a tap, and how many slips the class was ever given when its button was shown. */
export interface SlipWish {
  readonly children: readonly ListedChild[];
  readonly slips: string;
}

/** Sends written slips to the teacher, in one message or more; `sent` is awaited after each, with what stands in it. */
export type SendSlips = (
  slips: readonly IssuedSlip[],
  sent: (some: readonly IssuedSlip[]) => Promise<void>,
) => Promise<void>;

/**
 * Sends new links to the children that were given none since the button was shown: a second list would kill the first, and
 * look the same.
 *
 * The slips of a message come into force after it is sent. One that surely did not arrive leaves the earlier links of its
 * children as they were, and the tap, handled again, makes new ones for these children alone.
 */
export async function sendFresh(
  tap: Tap,
  scope: TeacherScope,
  wish: SlipWish,
  send: SendSlips,
): Promise<void> {
  const { deps } = tap;
  const waiting = await stillWithout(tap, scope, wish);
  if (!waiting) return tap.answer(linksMade(), 'alert');
  await tap.answer();
  const childIds = waiting.map((child) => child.id);
  const written = await writeSlips(deps.store, scope, childIds);
  await send(written, (slips) => keepSlips(deps.store, scope, { slips, now: deps.clock.now() }));
}

/** The children of a wish that were given no link since; null when all were. */
async function stillWithout(
  tap: Tap,
  scope: TeacherScope,
  wish: SlipWish,
): Promise<readonly ListedChild[] | null> {
  const { store } = tap.deps;
  if (wish.slips === String(await countSlips(store, scope))) return wish.children;
  const given = await childrenGivenSlips(store, scope, Number(wish.slips));
  // Slips are never taken away, so a count that the class has not reached is forged.
  if (given.size === 0) return null;
  const waiting = wish.children.filter((child) => !given.has(child.id));
  return waiting.length > 0 ? waiting : null;
}

/** The children of a class that nobody helps. */
export async function withoutHelper(tap: Tap, scope: TeacherScope): Promise<ListedChild[]> {
  const children = await listChildren(tap.deps.store, scope);
  return children.filter((child) => child.helpers === 0);
}
