import { adjustmentOf, listFamilyChildren, type Store } from '../../db/index.ts';

/** The nicknames of a helper's children whose cards come without timing. */
export async function untimedChildren(store: Store, helperId: string): Promise<string[]> {
  const untimed: string[] = [];
  for (const { id, nickname } of await listFamilyChildren(store, helperId)) {
    if ((await adjustmentOf(store, id)).untimed) untimed.push(nickname);
  }
  return untimed;
}
