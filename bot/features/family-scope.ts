import { AppError, type FamilyScope, findHelperByChat } from '../../db/index.ts';
import type { Tap } from './tap.ts';

/** The helper who taps; somebody who is none gets the same answer as a helper of another child. */
export async function helperOf(tap: Tap): Promise<string> {
  const helper = await findHelperByChat(tap.deps.store, tap.userId);
  if (!helper) throw new AppError('not_found', 'child');
  return helper.id;
}

/** The helper who taps and the child a button names. Whether it is the helper's own is the verbs' to say. */
export async function familyScope(tap: Tap, childId: string): Promise<FamilyScope> {
  return { helperId: await helperOf(tap), childId };
}
