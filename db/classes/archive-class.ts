import { and, eq, inArray, sql } from 'drizzle-orm';
import type { ActToUndo } from '../acts/act-kinds.ts';
import { keepAct } from '../acts/keep-act.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { callBack, callOff } from '../ledger/call-off.ts';
import { oweClassNews } from '../ledger/owe-class-news.ts';
import { ledger, schoolClass } from '../schema/index.ts';
import { revoke } from '../teachers/invite-colleague.ts';
import { lockAsLead } from '../teachers/list-teachers.ts';
import type { TeacherScope } from './get-class.ts';
import { LOOK_NOW } from './look-again.ts';

/** What the ledger says of a message that was called off because its class was archived. */
const CALLED_OFF = 'class archived';

/**
 * Puts a class away; only its lead may. From this moment on nothing of it is sent, tonight's drills included, and its links open
 * nothing; everything that was marked stays. Families and co-teachers are told once, an hour later. A drill that is in a chat
 * already can be marked until its day ends, so that an archiving taken back has lost nothing. Returns the act's id.
 */
export async function archiveClass(store: Store, scope: TeacherScope, now: Date): Promise<string> {
  return inTransaction(store, async (inner) => {
    await lockAsLead(inner, scope);
    const { classId, teacherId } = scope;
    await inner.db.update(schoolClass).set({ archivedAt: now }).where(eq(schoolClass.id, classId));
    await revoke(inner, classId, now);
    await callOff(inner, { which: [eq(ledger.classId, classId)], because: CALLED_OFF, now });
    await oweClassNews(inner, 'class_stopped', { classId, by: teacherId, now });
    return keepAct(inner, scope, { kind: 'classArchived', before: {}, now });
  });
}

/**
 * Takes a class out of the archive. What was called off and is not too late goes out after all. Whoever was told that practice
 * stops is told that it goes on; while nobody was told, nobody hears of either.
 */
export async function undoArchiving(
  inner: Store,
  { classId, by }: ActToUndo<'classArchived'>,
  now: Date,
): Promise<void> {
  const [row] = await inner.db
    .select({ archivedAt: schoolClass.archivedAt })
    .from(schoolClass)
    .where(eq(schoolClass.id, classId))
    .for('update');
  if (!row?.archivedAt) throw new AppError('conflict', 'undo');
  await inner.db
    .update(schoolClass)
    .set({ archivedAt: null, lookAt: LOOK_NOW })
    .where(eq(schoolClass.id, classId));
  const wereTold = await callOffNews(inner, classId, now);
  if (wereTold) await oweClassNews(inner, 'class_resumed', { classId, by, now });
  await callBack(inner, { which: [eq(ledger.classId, classId)], because: CALLED_OFF, now });
}

/** Keeps the word that practice stops from leaving. True when it has left already, to anybody. */
async function callOffNews(inner: Store, classId: string, now: Date): Promise<boolean> {
  const news = [eq(ledger.subjectId, classId), eq(ledger.kind, 'class_stopped')] as const;
  await callOff(inner, { which: news, because: 'not wanted', now });
  const [left] = await inner.db
    .select({ count: sql<number>`count(*)::int` })
    .from(ledger)
    .where(and(...news, inArray(ledger.status, ['sent', 'unknown', 'attempting'])));
  return (left?.count ?? 0) > 0;
}
