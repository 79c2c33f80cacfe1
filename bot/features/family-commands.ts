import {
  AppError,
  CLASS_LIMITS,
  type FamilyChild,
  findEvening,
  findHelperByChat,
  findTeacherByChat,
  getWay,
  listFamilyChildren,
  localTimeAt,
  setEveningTime,
} from '../../db/index.ts';
import { parseTimeOfDay } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import { eveningScreen } from '../screens/evening-screen.ts';
import { button } from '../screens/screen.ts';
import { wayScreen } from '../screens/way-screen.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/family.ts';
import type { Typed } from './say.ts';
import { untimedChildren } from './untimed-children.ts';

/** `/today`: today's drill of each own child, as a fresh message. */
export async function todayCommand(message: Typed): Promise<void> {
  const family = await familyOf(message);
  if (!family) return;
  const { deps, userId, reply } = message;
  for (const child of family.children) {
    const { day } = localTimeAt(deps.clock.now(), child.schoolClass.zone);
    const view = await findEvening(deps.store, {
      helperId: family.helperId,
      childId: child.id,
      day,
    });
    if (view) {
      const way = await getWay(deps.store, family.helperId);
      await sendScreen(deps, userId, eveningScreen(view, day, { ...deps, way }));
    } else await reply(texts.nothingToday(child));
  }
}

/** `/time 18:15`: another evening time for the family. */
export async function timeCommand(message: Typed, value: string): Promise<void> {
  const family = await familyOf(message);
  if (!family) return;
  const time = parseTimeOfDay(value);
  const refuse = () =>
    message.reply(texts.badTime(value, CLASS_LIMITS.eveningFrom, CLASS_LIMITS.eveningTo));
  if (!time) return refuse();
  try {
    const now = message.deps.clock.now();
    await setEveningTime(message.deps.store, { helperId: family.helperId, time, now });
  } catch (error) {
    if (error instanceof AppError && error.code === 'invalid') return refuse();
    throw error;
  }
  await message.reply(texts.timeSet(time));
}

/** `/show`: how the evening is shown, and the other ways. */
export async function showCommand(message: Typed): Promise<void> {
  const family = await familyOf(message);
  if (!family) return;
  const { store } = message.deps;
  const untimed = await untimedChildren(store, family.helperId);
  const { text, buttons } = wayScreen(await getWay(store, family.helperId), untimed);
  await message.reply(text, buttons);
}

/** `/stop`: asks once, because it cannot be undone without a new link. */
export async function stopCommand(message: Typed): Promise<void> {
  const family = await familyOf(message);
  if (!family) return;
  await message.reply(texts.askToLeave(family.children), [
    [button(BUTTONS.leave, { kind: 'leave' })],
    [button(BUTTONS.stay, { kind: 'stay' })],
  ]);
}

/** The sender's family; somebody without one is told what to do and gets null. */
async function familyOf(
  message: Typed,
): Promise<{ helperId: string; children: FamilyChild[] } | null> {
  const helper = await findHelperByChat(message.deps.store, message.userId);
  const children = helper ? await listFamilyChildren(message.deps.store, helper.id) : [];
  if (helper && children.length > 0) return { helperId: helper.id, children };
  const teacher = await findTeacherByChat(message.deps.store, message.userId);
  await message.reply(teacher ? texts.teacherHelpsNobody() : texts.stranger(message.deps.teachers));
  return null;
}
