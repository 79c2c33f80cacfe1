import {
  type Delivery,
  findHelperByChat,
  getActivePlan,
  listFamilyChildren,
} from '../../db/index.ts';
import { postScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { movedToClass } from '../texts/moved.ts';

/**
 * The word to a helper that a child is in another class, as things are when it is sent. Null when the helper has left, or the
 * child was archived meanwhile.
 */
export async function prepareMoved(
  deps: BotDeps,
  { chatId, subjectId }: Delivery,
): Promise<(() => Promise<number>) | null> {
  const helper = await findHelperByChat(deps.store, chatId);
  const children = helper ? await listFamilyChildren(deps.store, helper.id) : [];
  const child = children.find(({ id }) => id === subjectId);
  if (!child) return null;
  const hasPlan = (await getActivePlan(deps.store, child.schoolClass.id)) !== null;
  return () => postScreen(deps, chatId, { text: movedToClass(child, hasPlan), buttons: [] });
}
