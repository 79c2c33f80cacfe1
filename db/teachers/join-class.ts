import { and, eq, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { oweHandedOver } from '../ledger/owe-class-news.ts';
import { classTeacher, schoolClass, type teacherInvite } from '../schema/index.ts';
import { revoke } from './invite-colleague.ts';
import type { TeacherRole } from './list-teachers.ts';

type Invite = typeof teacherInvite.$inferSelect;

/** What somebody is to a class after opening a link; `isNew` says that the link made it so. */
interface Joined {
  readonly classId: string;
  readonly role: TeacherRole;
  readonly isNew: boolean;
}

/**
 * Makes the taker of an invitation a teacher of its class. With a lead's invitation the taker becomes the lead, whoever issued
 * it stays as a co-teacher and is told, and the class's open links die. Null for an invitation without a class. One whose class
 * is archived, or whose issuer is the lead no more, is `not_found`. Inside the caller's transaction.
 */
export async function joinByInvite(
  inner: Store,
  invite: Invite,
  takerId: string,
  now: Date,
): Promise<Joined | null> {
  const { classId, issuedBy, role } = invite;
  if (!classId || !issuedBy || !role) return null;
  await lockRunning(inner, classId);
  if ((await roleOf(inner, classId, issuedBy)) !== 'lead') {
    throw new AppError('not_found', 'teacher invitation');
  }
  const present = await roleOf(inner, classId, takerId);
  if (present === 'lead' || present === role) return { classId, role: present, isNew: false };
  if (role === 'lead') await stepBack(inner, { classId, leadId: issuedBy, now });
  await inner.db
    .insert(classTeacher)
    .values({ classId, teacherId: takerId, role, createdAt: now })
    .onConflictDoUpdate({ target: [classTeacher.classId, classTeacher.teacherId], set: { role } });
  return { classId, role, isNew: true };
}

/** Where a code led that this teacher has taken; null when it named no class, or when they teach it no more. */
export async function joinedOf(
  inner: Store,
  { classId }: Invite,
  teacherId: string,
): Promise<{ classId: string; role: TeacherRole } | null> {
  const role = classId ? await roleOf(inner, classId, teacherId) : null;
  return classId && role ? { classId, role } : null;
}

/** The lead becomes a co-teacher and is told; the links it gave away die, the one in use among them. */
async function stepBack(
  inner: Store,
  { classId, leadId, now }: { classId: string; leadId: string; now: Date },
): Promise<void> {
  await inner.db
    .update(classTeacher)
    .set({ role: 'co' })
    .where(and(eq(classTeacher.classId, classId), eq(classTeacher.teacherId, leadId)));
  await revoke(inner, classId, now);
  await oweHandedOver(inner, { classId, teacherId: leadId, now });
}

async function lockRunning(inner: Store, classId: string): Promise<void> {
  const [row] = await inner.db
    .select({ id: schoolClass.id })
    .from(schoolClass)
    .where(and(eq(schoolClass.id, classId), isNull(schoolClass.archivedAt)))
    .for('update');
  if (!row) throw new AppError('not_found', 'teacher invitation');
}

async function roleOf(
  inner: Store,
  classId: string,
  teacherId: string,
): Promise<TeacherRole | null> {
  const [row] = await inner.db
    .select({ role: classTeacher.role })
    .from(classTeacher)
    .where(and(eq(classTeacher.classId, classId), eq(classTeacher.teacherId, teacherId)));
  return row?.role ?? null;
}
