import {
  AppError,
  type ClassSettings,
  createClass,
  findTeacherByChat,
  isTitle,
  parseZone,
} from '../../db/index.ts';
import { parseTimeOfDay, type TimeOfDay, type Weekday } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import { oneLine } from '../input/one-line.ts';
import { timesScreen } from '../screens/class-screens.ts';
import { button } from '../screens/screen.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { errorText } from '../texts/errors.ts';
import { stranger } from '../texts/family.ts';
import * as texts from '../texts/teacher.ts';
import { lines } from '../texts/words.ts';
import { expect, fulfilled } from './expectations.ts';
import type { Typed } from './say.ts';

/** A week most classes start from; every part of it is a button away. */
const USUAL: Omit<ClassSettings, 'title' | 'zone'> = {
  weekdays: [1, 2, 3, 4, 5] satisfies Weekday[],
  eveningTime: time('17:30'),
  nudgeTime: time('19:00'),
  digestWeekday: 5,
  digestTime: time('20:00'),
};

/** `/newclass`: asks for the title. */
export async function newClassCommand(message: Typed): Promise<void> {
  const teacher = await findTeacherByChat(message.deps.store, message.userId);
  if (!teacher) return message.reply(stranger());
  await expect(message.deps, message.userId, { kind: 'new_title', data: {} });
  await message.reply(texts.ask('title'));
}

/** Takes the title and asks for the time zone. */
export async function newClassTitle(message: Typed): Promise<void> {
  const title = oneLine(message.text);
  if (!isTitle(title)) {
    return message.reply(lines(errorText(new AppError('invalid', 'title'))));
  }
  await expect(message.deps, message.userId, { kind: 'new_zone', data: { title } });
  await message.reply(texts.ask('zone'));
}

/** Takes the time zone, makes the class, and offers its days and times and the roster. */
export async function newClassZone(message: Typed, title: string): Promise<void> {
  const { deps, userId, reply } = message;
  const teacher = await findTeacherByChat(deps.store, userId);
  if (!teacher) return reply(stranger());
  const zone = parseZone(message.text);
  if (!zone) return reply(texts.badZone(message.text));
  const schoolClass = await createClass(deps.store, {
    teacherId: teacher.id,
    settings: { ...USUAL, title, zone },
    now: deps.clock.now(),
  });
  await fulfilled(deps, userId);
  await sendScreen(deps, userId, timesScreen(schoolClass));
  const next = { classId: schoolClass.id, kind: 'askFor', what: 'roster' } as const;
  await reply(texts.classMade(), [
    [button(BUTTONS.addChildren, next)],
    [button(BUTTONS.plan, { kind: 'plan', classId: schoolClass.id })],
  ]);
}

function time(text: string): TimeOfDay {
  const parsed = parseTimeOfDay(text);
  if (!parsed) throw new TypeError(`${text} is not a time of day`);
  return parsed;
}
