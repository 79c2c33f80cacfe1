import { adjustmentOf, getDisplay, listFamilyChildren, type Store } from '../../db/index.ts';

/** The nicknames of a helper's children whose cards come without timing: by the teacher's choice, or all by the helper's own. */
export async function untimedChildren(store: Store, helperId: string): Promise<string[]> {
  const { noTiming } = await getDisplay(store, helperId);
  const untimed: string[] = [];
  for (const { id, nickname } of await listFamilyChildren(store, helperId)) {
    if (noTiming || (await adjustmentOf(store, id)).untimed) untimed.push(nickname);
  }
  return untimed;
}
