import { becomeTeacher, findTeacherByChat } from '../../db/index.ts';
import { readerLanguage } from '../language/index.ts';
import { button } from '../screens/screen.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { welcomeTeacher } from '../texts/teacher.ts';
import { byInvitation } from '../texts/teachers.ts';
import { showHome } from './class-home.ts';
import type { Typed } from './say.ts';

/** `/teach`: makes the sender a teacher where the operator lets anybody be one. A teacher sees their classes. */
export async function teachCommand(message: Typed): Promise<void> {
  const { deps, userId, reply } = message;
  const known = await findTeacherByChat(deps.store, userId);
  if (known) return showHome(message, known.id);
  if (deps.teachers !== 'open') return reply(byInvitation());
  await becomeTeacher(deps.store, {
    chatId: userId,
    language: readerLanguage(),
    now: deps.clock.now(),
  });
  deps.log.info({}, 'teacher_joined');
  await reply(welcomeTeacher(), [[button(BUTTONS.newClass, { kind: 'newClass' })]]);
}
