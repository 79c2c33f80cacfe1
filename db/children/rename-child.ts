import { eq } from 'drizzle-orm';
import type { TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { child } from '../schema/index.ts';
import { checkPlace } from './class-places.ts';
import { lockChild } from './own-child.ts';

/**
 * Calls a child by another nickname, in every text and picture from now on. Returns the nickname it had. One that another child
 * of the class has, in capitals or not, is a `conflict`. There is no act: the reply names both, and typing the old one undoes it.
 */
export async function renameChild(
  store: Store,
  scope: TeacherScope,
  { number, nickname }: { number: number; nickname: string },
): Promise<string> {
  return inTransaction(store, async (inner) => {
    await lockClass(inner, scope.classId);
    const row = await lockChild(inner, scope, { number, archived: false });
    await checkPlace(inner, scope.classId, { childId: row.id, nickname });
    await inner.db.update(child).set({ nickname }).where(eq(child.id, row.id));
    return row.nickname;
  });
}
