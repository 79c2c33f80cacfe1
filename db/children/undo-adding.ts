import { and, eq, inArray, isNull } from 'drizzle-orm';
import { keepAct } from '../acts/keep-act.ts';
import type { Inverse } from '../acts/undo-act.ts';
import type { TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { adjustment, book, child, evening, helperChild, pagePlace, slip } from '../schema/index.ts';
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

/**
 * Takes the children of a list out again. A child for whom no slip was made, and that never had an evening, is deleted, and its
 * number is free. One with a slip is archived: printed slips, which nobody can call back, carry its number. Once a helper has
 * joined one of them the list stays: `conflict`.
 */
export const undoAdding: Inverse<'childrenAdded'> = async (inner, { classId, before }, now) => {
  await lockClass(inner, classId);
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
  await dropUnseen(
    inner,
    rows.map(({ id }) => id),
  );
  await inner.db.update(child).set({ archivedAt: now }).where(own);
};

/** Deletes those of the children, locked by the caller, that no paper and no family has seen, with what a teacher set for them. */
async function dropUnseen({ db }: Store, childIds: readonly string[]): Promise<void> {
  const slips = await db
    .select({ id: slip.childId })
    .from(slip)
    .where(inArray(slip.childId, childIds));
  const evenings = await db
    .select({ id: evening.childId })
    .from(evening)
    .where(inArray(evening.childId, childIds));
  const seen = new Set([...slips, ...evenings].map(({ id }) => id));
  const unseen = childIds.filter((id) => !seen.has(id));
  if (unseen.length === 0) return;
  await db.delete(adjustment).where(inArray(adjustment.childId, unseen));
  await db.delete(pagePlace).where(inArray(pagePlace.childId, unseen));
  await db.delete(book).where(inArray(book.childId, unseen));
  await db.delete(child).where(inArray(child.id, unseen));
}
