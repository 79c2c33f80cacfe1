import { and, eq, gt, isNull } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { hashCode, newCode } from '../codes.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { teacherInvite } from '../schema/index.ts';
import { INVITE_DAYS } from './invite-teacher.ts';
import { lockAsLead, type TeacherRole } from './list-teachers.ts';

/** A link that nobody has taken yet. Its code was shown once and is not kept. */
export interface OpenInvite {
  readonly role: TeacherRole;
  readonly expiresAt: Date;
}

/**
 * Issues a one-time code that makes whoever takes it a teacher of the class: a co-teacher, or its lead in place of whoever
 * issued it. Only the lead may. An older open code for the same role dies.
 */
export async function inviteColleague(
  store: Store,
  scope: TeacherScope,
  { role, now }: { role: TeacherRole; now: Date },
): Promise<string> {
  return inTransaction(store, async (inner) => {
    await lockAsLead(inner, scope);
    await revoke(inner, scope.classId, now, role);
    const code = newCode();
    await inner.db.insert(teacherInvite).values({
      id: newId(now),
      codeHash: hashCode(code),
      classId: scope.classId,
      issuedBy: scope.teacherId,
      role,
      expiresAt: new Date(now.getTime() + INVITE_DAYS * 86_400_000),
      createdAt: now,
    });
    return code;
  });
}

/** Lets an open code die, if there is one. Only the lead may. */
export async function cancelInvite(
  store: Store,
  scope: TeacherScope,
  { role, now }: { role: TeacherRole; now: Date },
): Promise<void> {
  await inTransaction(store, async (inner) => {
    await lockAsLead(inner, scope);
    await revoke(inner, scope.classId, now, role);
  });
}

/** The codes of a class that can still be taken, at most one for each role. */
export async function listOpenInvites(
  store: Store,
  scope: TeacherScope,
  now: Date,
): Promise<OpenInvite[]> {
  await getClass(store, scope);
  const rows = await store.db
    .select({ role: teacherInvite.role, expiresAt: teacherInvite.expiresAt })
    .from(teacherInvite)
    .where(and(isOpen(scope.classId), gt(teacherInvite.expiresAt, now)));
  return rows.flatMap(({ role, expiresAt }) => (role ? [{ role, expiresAt }] : []));
}

/** Lets the open codes of a class die, of one role or of both. Inside the caller's transaction. */
export async function revoke(
  inner: Store,
  classId: string,
  now: Date,
  role?: TeacherRole,
): Promise<void> {
  await inner.db
    .update(teacherInvite)
    .set({ revokedAt: now })
    .where(and(isOpen(classId), role ? eq(teacherInvite.role, role) : undefined));
}

function isOpen(classId: string) {
  return and(
    eq(teacherInvite.classId, classId),
    isNull(teacherInvite.usedAt),
    isNull(teacherInvite.revokedAt),
  );
}
