import type { TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { act } from '../schema/index.ts';
import type { ActBefore, ActKind } from './act-kinds.ts';

/**
 * Keeps what is needed to take back a change, for a day. Call it inside the transaction of the change itself, after the scope
 * was checked. Returns the act's id, for the Undo button.
 */
export async function keepAct<K extends ActKind>(
  inner: Store,
  scope: TeacherScope,
  { kind, before, now }: { kind: K; before: ActBefore<K>; now: Date },
): Promise<string> {
  const id = newId(now);
  await inner.db.insert(act).values({ id, ...scope, kind, before, createdAt: now });
  return id;
}
