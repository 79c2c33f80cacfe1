import { and, eq } from 'drizzle-orm';
import { keepAct } from '../acts/keep-act.ts';
import type { Inverse } from '../acts/undo-act.ts';
import type { TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { callBack, callOff } from '../ledger/call-off.ts';
import { child, ledger } from '../schema/index.ts';
import { checkPlace } from './class-places.ts';
import { lockChild } from './own-child.ts';

/** What the ledger says of a message that was called off because its child was archived. */
const CALLED_OFF = 'archived';

/**
 * Takes a child off the class's list. Nothing more is sent about it from this moment on and its slips open nothing; its marks
 * and its number stay its own. A drill that is in a chat already can be marked until its day ends, so that an archiving taken
 * back has lost nothing. Returns the act's id.
 */
export async function archiveChild(
  store: Store,
  scope: TeacherScope,
  { number, now }: { number: number; now: Date },
): Promise<string> {
  return inTransaction(store, async (inner) => {
    const { id } = await lockChild(inner, scope, { number, archived: false });
    await inner.db.update(child).set({ archivedAt: now }).where(eq(child.id, id));
    await callOff(inner, { which: [eq(ledger.subjectId, id)], because: CALLED_OFF, now });
    return keepAct(inner, scope, { kind: 'childArchived', before: { childId: id }, now });
  });
}

/**
 * Puts an archived child back on the list, under its own number; its drills come from the
 * next evening on. Thirty days later it is gone for good. Refused when the class is full or another child has its nickname by now.
 */
export async function bringBackChild(
  store: Store,
  scope: TeacherScope,
  { number, now }: { number: number; now: Date },
): Promise<void> {
  await inTransaction(store, async (inner) => {
    await lockClass(inner, scope.classId);
    const row = await lockChild(inner, scope, { number, archived: true });
    await checkPlace(inner, scope.classId, { childId: row.id, nickname: row.nickname });
    await inner.db
      .update(child)
      .set({ archivedAt: null, timeSince: now })
      .where(eq(child.id, row.id));
  });
}

/** Undoes an archiving. What was called off and is not too late goes out after all, as if nothing had been tapped. */
export const undoArchive: Inverse<'childArchived'> = async (inner, { classId, before }, now) => {
  await lockClass(inner, classId);
  const [row] = await inner.db
    .select()
    .from(child)
    .where(and(eq(child.id, before.childId), eq(child.classId, classId)))
    .for('update');
  if (!row?.archivedAt || row.erasingSince) throw new AppError('conflict', 'undo');
  await checkPlace(inner, classId, { childId: row.id, nickname: row.nickname });
  await inner.db.update(child).set({ archivedAt: null }).where(eq(child.id, row.id));
  await callBack(inner, { which: [eq(ledger.subjectId, row.id)], because: CALLED_OFF, now });
};
