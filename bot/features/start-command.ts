import {
  acceptTeacherInvite,
  findTeacherByChat,
  getClass,
  markReachable,
  readSlip,
} from '../../db/index.ts';
import { readCode } from '../input/written-code.ts';
import { readerLanguage } from '../language/index.ts';
import { noticeScreen } from '../screens/language-screens.ts';
import { button } from '../screens/screen.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { welcomeTeacher } from '../texts/teacher.ts';
import { joinedClass } from '../texts/teachers.ts';
import { lines } from '../texts/words.ts';
import { readHome, showHome } from './class-home.ts';
import { help } from './help.ts';
import type { Typed } from './say.ts';

/** Start payloads that begin so invite a teacher; all others are a child's slip. */
export const INVITE_PREFIX = 't-';

/** `/start`, with the code of a link or without. */
export async function startCommand(message: Typed, payload: string): Promise<void> {
  const { botId, store } = message.deps;
  await markReachable(store, { botId, chatId: message.userId });
  if (payload.startsWith(INVITE_PREFIX)) {
    return acceptInvite(message, payload.slice(INVITE_PREFIX.length));
  }
  if (payload !== '') {
    const typed = readCode(payload);
    return showNotice(message, typed?.kind === 'code' ? typed.code : payload);
  }
  return greet(message);
}

async function acceptInvite({ deps, userId, reply }: Typed, code: string): Promise<void> {
  const now = deps.clock.now();
  const { id, joined } = await acceptTeacherInvite(deps.store, {
    code,
    chatId: userId,
    language: readerLanguage(),
    now,
  });
  deps.log.info({}, 'teacher_joined');
  if (!joined) {
    return reply(welcomeTeacher(), [[button(BUTTONS.newClass, { kind: 'newClass' })]]);
  }
  const scope = { teacherId: id, classId: joined.classId };
  const home = await readHome(deps.store, scope);
  const said = joinedClass(await getClass(deps.store, scope), joined.role);
  await reply(lines(said, '', home.text), home.buttons);
}

async function showNotice({ deps, userId, reply }: Typed, code: string): Promise<void> {
  const slip = await readSlip(deps.store, { code, chatId: userId, now: deps.clock.now() });
  const { text, buttons } = noticeScreen(slip, code);
  await reply(text, buttons);
}

async function greet(message: Typed): Promise<void> {
  const { deps, userId } = message;
  const teacher = await findTeacherByChat(deps.store, userId);
  return teacher ? showHome(message, teacher.id) : help(message, true);
}
