import { AppError, findTeacherByChat, listActs, undoAct } from '../../db/index.ts';
import { afterUndo, undoListScreen } from '../screens/undo.ts';
import { undoIsForTeachers } from '../texts/acts.ts';
import { readHome } from './class-home.ts';
import type { Typed } from './say.ts';
import type { Tap, TapHandlers } from './tap.ts';

/** Taking back what was done, by the button beside it or off the list of the day. */
export const undoTaps: TapHandlers<'undo' | 'undoList'> = {
  undo: async (tap, { act: actId }) => {
    const { store, clock } = tap.deps;
    const teacherId = await teacherOf(tap);
    const now = clock.now();
    // Read first: once it is taken back it is on the list no more.
    const listed = (await listActs(store, { teacherId, now })).find(({ id }) => id === actId);
    const undone = await undoAct(store, { teacherId, actId, now });
    const home = await readHome(store, { teacherId, classId: undone.classId });
    await tap.answer();
    await tap.show(afterUndo(home, undone, listed?.nickname ?? null));
  },
  undoList: async (tap, { page }) => {
    const acts = await actsOf(tap, await teacherOf(tap));
    await tap.answer();
    await tap.show(undoListScreen(acts, page));
  },
};

/** `/undo`: what can be taken back, in all classes of the teacher. */
export async function undoCommand(message: Typed): Promise<void> {
  const teacher = await findTeacherByChat(message.deps.store, message.userId);
  if (!teacher) return message.reply(undoIsForTeachers());
  const { text, buttons } = undoListScreen(await actsOf(message, teacher.id), 0);
  await message.reply(text, buttons);
}

async function teacherOf({ deps, userId }: Tap): Promise<string> {
  const teacher = await findTeacherByChat(deps.store, userId);
  if (!teacher) throw new AppError('not_found', 'act');
  return teacher.id;
}

function actsOf({ deps }: Pick<Tap, 'deps'>, teacherId: string) {
  return listActs(deps.store, { teacherId, now: deps.clock.now() });
}
