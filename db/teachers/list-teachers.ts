import { and, asc, desc, eq, isNull, sql } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { isReached } from '../helpers/reachability.ts';
import { classTeacher, schoolClass, type TEACHER_ROLES, teacher } from '../schema/index.ts';

/** What a teacher is to a class: its one `lead`, or one of its `co`-teachers. */
export type TeacherRole = (typeof TEACHER_ROLES)[number];

/** A teacher of a class. No name is stored, so the only one who can be told apart is whoever asks. */
export interface ClassTeacher {
  readonly teacherId: string;
  readonly role: TeacherRole;
  readonly isYou: boolean;
  /** Since when they teach the class. */
  readonly since: Date;
  /** Whether the chat service still reaches them. */
  readonly isReachable: boolean;
}

/** The teachers of a class, the lead first, the others in the order in which they came. */
export async function listTeachers(store: Store, scope: TeacherScope): Promise<ClassTeacher[]> {
  await getClass(store, scope);
  const rows = await store.db
    .select({
      teacherId: classTeacher.teacherId,
      role: classTeacher.role,
      since: classTeacher.createdAt,
      isReachable: sql<boolean>`${isReached(store, teacher.chatId, schoolClass.botId)}`,
    })
    .from(classTeacher)
    .innerJoin(teacher, eq(teacher.id, classTeacher.teacherId))
    .innerJoin(schoolClass, eq(schoolClass.id, classTeacher.classId))
    .where(eq(classTeacher.classId, scope.classId))
    .orderBy(desc(classTeacher.role), asc(classTeacher.createdAt), asc(classTeacher.teacherId));
  return rows.map((row) => ({ ...row, isYou: row.teacherId === scope.teacherId }));
}

/**
 * Makes changes to who teaches a class wait for each other, and lets only its lead through. Somebody who does not teach it gets
 * `not_found`, a co-teacher the conflict `lead only`. Inside the caller's transaction.
 */
export async function lockAsLead(inner: Store, scope: TeacherScope): Promise<void> {
  const role = await lockRole(inner, scope);
  if (role !== 'lead') throw new AppError('conflict', 'lead only');
}

/** As {@link lockAsLead}, for any teacher of the class; returns what they are to it. */
export async function lockRole(inner: Store, scope: TeacherScope): Promise<TeacherRole> {
  await inner.db
    .select({ id: schoolClass.id })
    .from(schoolClass)
    .where(and(eq(schoolClass.id, scope.classId), isNull(schoolClass.archivedAt)))
    .for('update');
  await getClass(inner, scope);
  const [row] = await inner.db
    .select({ role: classTeacher.role })
    .from(classTeacher)
    .where(
      and(eq(classTeacher.classId, scope.classId), eq(classTeacher.teacherId, scope.teacherId)),
    );
  if (!row) throw new AppError('not_found', 'class');
  return row.role;
}
