import { and, asc, eq, isNull } from 'drizzle-orm';
import type { TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { classTeacher, schoolClass, teacher } from '../schema/index.ts';

/** A teacher as the operator can tell one from another: nobody's name is kept. */
export interface TeacherAccount {
  readonly teacherId: string;
  readonly since: Date;
  /** Titles of the running classes. */
  readonly classes: readonly string[];
}

/** Everybody who is a teacher, those who came first first. No owner's scope: for the operator. */
export async function listTeacherAccounts(store: Store): Promise<TeacherAccount[]> {
  const rows = await store.db
    .select({ teacherId: teacher.id, since: teacher.createdAt, title: schoolClass.title })
    .from(teacher)
    .leftJoin(classTeacher, eq(classTeacher.teacherId, teacher.id))
    .leftJoin(
      schoolClass,
      and(eq(schoolClass.id, classTeacher.classId), isNull(schoolClass.archivedAt)),
    )
    .orderBy(asc(teacher.createdAt), asc(teacher.id), asc(schoolClass.id));
  const accounts = new Map<string, TeacherAccount>();
  for (const { teacherId, since, title } of rows) {
    const known = accounts.get(teacherId)?.classes ?? [];
    const classes = title === null ? known : [...known, title];
    accounts.set(teacherId, { teacherId, since, classes });
  }
  return [...accounts.values()];
}

/** The scope of a running class's lead, for what the operator may look at as they could; `not_found` for any other class. */
export async function leadScope(store: Store, classId: string): Promise<TeacherScope> {
  const [row] = await store.db
    .select({ teacherId: classTeacher.teacherId })
    .from(classTeacher)
    .innerJoin(schoolClass, eq(schoolClass.id, classTeacher.classId))
    .where(
      and(
        eq(classTeacher.classId, classId),
        eq(classTeacher.role, 'lead'),
        isNull(schoolClass.archivedAt),
      ),
    );
  if (!row) throw new AppError('not_found', 'class');
  return { teacherId: row.teacherId, classId };
}
