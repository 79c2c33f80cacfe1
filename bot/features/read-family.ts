import {
  type FamilyChild,
  findHelperByChat,
  listFamilyChildren,
  listOwnChildren,
  type Store,
} from '../../db/index.ts';

/** A helper and the children that somebody sits beside now. */
export interface Family {
  readonly helperId: string;
  readonly children: readonly FamilyChild[];
  /** Nicknames of children whose practice has stopped: they are archived, or their class is. */
  readonly stopped: readonly string[];
}

/**
 * The family behind a chat account; null for somebody who sits beside no child. A child that is being erased at a family's wish
 * is in neither list: its helpers were told so.
 */
export async function readFamily(store: Store, chatId: number): Promise<Family | null> {
  const helper = await findHelperByChat(store, chatId);
  if (!helper) return null;
  const children = await listFamilyChildren(store, helper.id);
  const practising = new Set(children.map(({ id }) => id));
  const own = await listOwnChildren(store, helper.id);
  const stopped = own
    .filter(({ id, erasing }) => erasing === 'no' && !practising.has(id))
    .map(({ nickname }) => nickname);
  if (children.length + stopped.length === 0) return null;
  return { helperId: helper.id, children, stopped };
}
