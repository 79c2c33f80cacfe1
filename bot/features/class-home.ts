import {
  childrenOfClass,
  currentBook,
  getClass,
  getPlans,
  listClasses,
  type Store,
  type TeacherScope,
} from '../../db/index.ts';
import { sendScreen } from '../chat/show.ts';
import { homeScreen } from '../screens/class-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { classesScreen } from '../screens/teacher-screens.ts';
import type { Typed } from './say.ts';

/** The teacher's one class, the choice among several, or how to make the first. */
export async function showHome(message: Typed, teacherId: string): Promise<void> {
  const { deps, userId } = message;
  const classes = await listClasses(deps.store, teacherId);
  const [only, ...others] = classes;
  const screen =
    only && others.length === 0
      ? await readHome(deps.store, { teacherId, classId: only.id })
      : classesScreen(classes);
  await sendScreen(deps, userId, screen);
}

/** A class's home screen as it stands now. */
export async function readHome(store: Store, scope: TeacherScope): Promise<Screen> {
  const schoolClass = await getClass(store, scope);
  const children = await childrenOfClass(store, scope.classId);
  const { active } = await getPlans(store, scope);
  return homeScreen({
    schoolClass,
    children: children.length,
    joined: children.filter((child) => child.helpers > 0).length,
    hasPlan: active !== null,
    book: await currentBook(store, scope),
  });
}
