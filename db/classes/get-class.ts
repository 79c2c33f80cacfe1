import { and, asc, eq, getTableColumns, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { classTeacher, schoolClass } from '../schema/index.ts';
import { type SchoolClass, toSchoolClass } from './school-class.ts';

/** Names a class and the teacher who asks. Every teacher-side verb takes it. */
export interface TeacherScope {
  readonly teacherId: string;
  readonly classId: string;
}

/** The class, if this teacher teaches it; `not_found` otherwise. */
export async function getClass(store: Store, scope: TeacherScope): Promise<SchoolClass> {
  const [row] = await store.db
    .select(getTableColumns(schoolClass))
    .from(schoolClass)
    .innerJoin(classTeacher, eq(classTeacher.classId, schoolClass.id))
    .where(
      and(
        eq(schoolClass.id, scope.classId),
        eq(classTeacher.teacherId, scope.teacherId),
        isNull(schoolClass.archivedAt),
      ),
    );
  if (!row) throw new AppError('not_found', 'class');
  return toSchoolClass(row);
}

/** The classes a teacher teaches, oldest first. */
export async function listClasses(store: Store, teacherId: string): Promise<SchoolClass[]> {
  const rows = await store.db
    .select(getTableColumns(schoolClass))
    .from(schoolClass)
    .innerJoin(classTeacher, eq(classTeacher.classId, schoolClass.id))
    .where(and(eq(classTeacher.teacherId, teacherId), isNull(schoolClass.archivedAt)))
    .orderBy(asc(schoolClass.id));
  return rows.map(toSchoolClass);
}

/** Every class that is running: for the planners, which act for nobody in particular. */
export async function listRunningClasses(store: Store): Promise<SchoolClass[]> {
  const rows = await store.db
    .select()
    .from(schoolClass)
    .where(isNull(schoolClass.archivedAt))
    .orderBy(asc(schoolClass.id));
  return rows.map(toSchoolClass);
}

/** Any running class by id: for the engine's own work on ledger rows. An archived one is `not_found`. */
export async function getRunningClass(store: Store, classId: string): Promise<SchoolClass> {
  const [row] = await store.db
    .select()
    .from(schoolClass)
    .where(and(eq(schoolClass.id, classId), isNull(schoolClass.archivedAt)));
  if (!row) throw new AppError('not_found', 'class');
  return toSchoolClass(row);
}
