import { AppError, findTeacherByChat, type Store, type TeacherScope } from '../../db/index.ts';

/** The scope of a tap or a text about a class. Somebody who is no teacher gets what another teacher gets: not found. */
export async function teacherScope(
  store: Store,
  userId: number,
  classId: string,
): Promise<TeacherScope> {
  const teacher = await findTeacherByChat(store, userId);
  if (!teacher) throw new AppError('not_found', 'class');
  return { teacherId: teacher.id, classId };
}
