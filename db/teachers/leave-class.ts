import { and, eq } from 'drizzle-orm';
import type { ActToUndo } from '../acts/act-kinds.ts';
import { keepAct } from '../acts/keep-act.ts';
import type { TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { callOff } from '../ledger/call-off.ts';
import { classTeacher, ledger } from '../schema/index.ts';
import { lockAsLead, lockRole } from './list-teachers.ts';

/** What the ledger says of a message to somebody who teaches the class no more. */
const CALLED_OFF = 'left the class';

/**
 * Takes a co-teacher out of the class; only the lead may. Returns the id of the act, which can be taken back for a day. The lead
 * and whoever does not teach the class are `not_found`.
 */
export async function removeTeacher(
  store: Store,
  scope: TeacherScope,
  { teacherId, now }: { teacherId: string; now: Date },
): Promise<string> {
  return inTransaction(store, async (inner) => {
    await lockAsLead(inner, scope);
    const [removed] = await inner.db
      .delete(classTeacher)
      .where(
        and(
          eq(classTeacher.classId, scope.classId),
          eq(classTeacher.teacherId, teacherId),
          eq(classTeacher.role, 'co'),
        ),
      )
      .returning({ since: classTeacher.createdAt });
    if (!removed) throw new AppError('not_found', 'co-teacher');
    await callOffDigests(inner, scope.classId, teacherId, now);
    const before = { removed: teacherId, since: removed.since.toISOString() };
    return keepAct(inner, scope, { kind: 'teacherRemoved', before, now });
  });
}

/** Lets a co-teacher back in; one who has come back by a link meanwhile is a `conflict`. */
export async function undoRemoval(
  inner: Store,
  { classId, by, before: { removed, since } }: ActToUndo<'teacherRemoved'>,
): Promise<void> {
  // Who may not remove may not bring back either.
  await lockAsLead(inner, { classId, teacherId: by });
  const written = await inner.db
    .insert(classTeacher)
    .values({ classId, teacherId: removed, role: 'co', createdAt: new Date(since) })
    .onConflictDoNothing()
    .returning({ teacherId: classTeacher.teacherId });
  if (written.length === 0) throw new AppError('conflict', 'undo');
}

/**
 * A co-teacher leaves the class. It takes a new link to come back. The lead cannot leave (`lead leaves` is a conflict): a class
 * is handed over or archived first.
 */
export async function leaveClass(store: Store, scope: TeacherScope, now: Date): Promise<void> {
  await inTransaction(store, async (inner) => {
    const role = await lockRole(inner, scope);
    if (role === 'lead') throw new AppError('conflict', 'lead leaves');
    const { classId, teacherId } = scope;
    await inner.db
      .delete(classTeacher)
      .where(and(eq(classTeacher.classId, classId), eq(classTeacher.teacherId, teacherId)));
    await callOffDigests(inner, classId, teacherId, now);
  });
}

/** Digests that wait for somebody who may not read them any more are not sent. */
async function callOffDigests(
  inner: Store,
  classId: string,
  teacherId: string,
  now: Date,
): Promise<void> {
  const which = [eq(ledger.classId, classId), eq(ledger.recipientId, teacherId)] as const;
  await callOff(inner, { which, because: CALLED_OFF, now });
}
