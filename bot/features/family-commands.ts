import {
  AppError,
  CLASS_LIMITS,
  findEvening,
  findTeacherByChat,
  getDisplay,
  getWay,
  listOwnChildren,
  localTimeAt,
  setEveningTime,
} from '../../db/index.ts';
import { parseTimeOfDay } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import { eveningScreen } from '../screens/evening-screen.ts';
import { leaveWhomScreen } from '../screens/joining-screens.ts';
import { button } from '../screens/screen.ts';
import { wayScreen } from '../screens/way-screen.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/family.ts';
import { practisedBy } from './after-evening.ts';
import { nothingCame, pacesByChild } from './as-it-comes.ts';
import { type Family, readFamily } from './read-family.ts';
import type { Typed } from './say.ts';
import { untimedChildren } from './untimed-children.ts';

/** `/today`: today's drill of each own child, as a fresh message, and whose practice has stopped. */
export async function todayCommand(message: Typed): Promise<void> {
  const family = await familyOf(message);
  if (!family) return;
  const { deps, userId, reply } = message;
  if (family.stopped.length > 0) await reply(texts.practiceStopped(family.stopped));
  const paces = await pacesByChild(deps, family.helperId);
  for (const child of family.children) {
    const { day } = localTimeAt(deps.clock.now(), child.schoolClass.zone);
    const view = await findEvening(deps.store, {
      helperId: family.helperId,
      childId: child.id,
      day,
    });
    if (view) {
      const display = await getDisplay(deps.store, family.helperId);
      const practised = await practisedBy(deps, family.helperId, view);
      await sendScreen(deps, userId, eveningScreen(view, day, { ...deps, ...display, practised }));
    } else await reply(nothingCame(child, paces.get(child.id)));
  }
}

/** `/time 18:15`: another evening time for the family. */
export async function timeCommand(message: Typed, value: string): Promise<void> {
  const family = await practisingFamilyOf(message);
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
  const family = await practisingFamilyOf(message);
  if (!family) return;
  const { store } = message.deps;
  const untimed = await untimedChildren(store, family.helperId);
  const { text, buttons } = wayScreen(await getWay(store, family.helperId), untimed);
  await message.reply(text, buttons);
}

/** `/stop`: asks once, because it cannot be undone without a new link; of several children, which one. */
export async function stopCommand(message: Typed): Promise<void> {
  const family = await familyOf(message);
  if (!family) return;
  const all = await listOwnChildren(message.deps.store, family.helperId);
  const own = all.filter(({ erasing }) => erasing === 'no');
  if (own.length > 1) {
    const { text, buttons } = leaveWhomScreen(own);
    return message.reply(text, buttons);
  }
  await message.reply(texts.askToLeave(own), [
    [button(BUTTONS.leave, { kind: 'leave' })],
    [button(BUTTONS.stay, { kind: 'stay' })],
  ]);
}

/** The sender's family; somebody without one is told what to do and gets null. */
async function familyOf(message: Typed): Promise<Family | null> {
  const { store, teachers } = message.deps;
  const family = await readFamily(store, message.userId);
  if (family) return family;
  const teacher = await findTeacherByChat(store, message.userId);
  await message.reply(teacher ? texts.teacherHelpsNobody() : texts.stranger(teachers));
  return null;
}

/** {@link familyOf} for what is of use only while a child practises; a family whose practice has stopped is told so. */
export async function practisingFamilyOf(message: Typed): Promise<Family | null> {
  const family = await familyOf(message);
  if (!family || family.children.length > 0) return family;
  await message.reply(texts.practiceStopped(family.stopped));
  return null;
}
