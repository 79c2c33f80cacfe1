import type { TeacherScope } from '../../db/index.ts';
import type { Screen } from '../screens/screen.ts';
import type { Tap } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';

/** Answers a tap about a class and turns its message into the screen that a read or change leads to. */
export async function turn(
  tap: Tap,
  classId: string,
  read: (scope: TeacherScope) => Promise<Screen>,
): Promise<void> {
  const screen = await read(await teacherScope(tap.deps.store, tap.userId, classId));
  await tap.answer();
  await tap.show(screen);
}
