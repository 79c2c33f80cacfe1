import { and, eq, inArray, isNull } from 'drizzle-orm';
import { keepAct } from '../acts/keep-act.ts';
import type { Inverse } from '../acts/undo-act.ts';
import type { TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { child, helperChild } from '../schema/index.ts';
import { addChildren, type RosterChild } from './add-children.ts';

/** {@link addChildren} with an act, so that a list that went into the wrong class can be taken out again. At least one child. */
export async function addRoster(
  store: Store,
  scope: TeacherScope,
  input: { nicknames: readonly string[]; now: Date },
): Promise<{ added: RosterChild[]; actId: string }> {
  return inTransaction(store, async (inner) => {
    const added = await addChildren(inner, scope, input);
    const childIds = added.map(({ id }) => id);
    const { now } = input;
    const actId = await keepAct(inner, scope, { kind: 'childrenAdded', before: { childIds }, now });
    return { added, actId };
  });
}

/** Archives the children of a list again. Once a helper has joined one of them the list stays: `conflict`. */
export const undoAdding: Inverse<'childrenAdded'> = async (inner, { classId, before }, now) => {
  const own = and(
    inArray(child.id, before.childIds),
    eq(child.classId, classId),
    isNull(child.archivedAt),
  );
  const rows = await inner.db.select({ id: child.id }).from(child).where(own).for('update');
  const joined = await inner.db
    .select({ id: helperChild.childId })
    .from(helperChild)
    .where(inArray(helperChild.childId, before.childIds))
    .limit(1);
  if (rows.length === 0 || joined.length > 0) throw new AppError('conflict', 'undo');
  await inner.db.update(child).set({ archivedAt: now }).where(own);
};
