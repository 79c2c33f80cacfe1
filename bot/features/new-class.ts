import {
  AppError,
  type ClassSettings,
  createClass,
  findTeacherByChat,
  isTitle,
  listClasses,
} from '../../db/index.ts';
import { parseTimeOfDay, type TimeOfDay, type Weekday } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { oneLine } from '../input/one-line.ts';
import { zonesNamed } from '../input/zone-text.ts';
import { readerLanguage } from '../language/index.ts';
import { back, timesScreen } from '../screens/class-screens.ts';
import { button } from '../screens/screen.ts';
import { cancelButton, zoneScreen } from '../screens/set-up-screens.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { errorText } from '../texts/errors.ts';
import { stranger } from '../texts/family.ts';
import { severalZones } from '../texts/set-up.ts';
import * as texts from '../texts/teacher.ts';
import { lines, type Text } from '../texts/words.ts';
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
export async function newClassCommand({ deps, userId, reply }: Typed): Promise<void> {
  const teacher = await findTeacherByChat(deps.store, userId);
  if (!teacher) return reply(stranger(deps.teachers));
  await askClassTitle(deps, userId);
}

/** Asks a teacher for a new class's title. */
export async function askClassTitle(deps: BotDeps, userId: number): Promise<void> {
  await expect(deps, userId, { kind: 'new_title', data: {} });
  await sendScreen(deps, userId, { text: texts.ask('title'), buttons: [[cancelButton()]] });
}

/** Takes the title and asks for the time zone. */
export async function newClassTitle(message: Typed): Promise<void> {
  const title = oneLine(message.text);
  if (!isTitle(title)) {
    return message.reply(lines(errorText(new AppError('invalid', 'title'))));
  }
  await expect(message.deps, message.userId, { kind: 'new_zone', data: { title } });
  await askZone(message, null);
}

/** Takes the time zone that was typed. */
export async function newClassZone(message: Typed, title: string): Promise<void> {
  const [zone, ...others] = zonesNamed(message.text);
  if (zone && others.length === 0) return makeClass(message, { title, zone });
  await askZone(message, zone ? severalZones([zone, ...others]) : texts.badZone(message.text));
}

async function askZone({ deps, userId }: Typed, problem: Text | null): Promise<void> {
  const teacher = await findTeacherByChat(deps.store, userId);
  const classes = teacher ? await listClasses(deps.store, teacher.id) : [];
  const own = classes.map(({ zone }) => zone);
  const screen = zoneScreen({ own, now: deps.clock.now(), problem }, (zone) => ({
    kind: 'newZone',
    zone,
  }));
  await sendScreen(deps, userId, screen);
}

/** Makes the class, and offers its days and times and the roster. */
export async function makeClass(
  { deps, userId, reply }: Typed,
  { title, zone }: { title: string; zone: string },
): Promise<void> {
  const teacher = await findTeacherByChat(deps.store, userId);
  if (!teacher) return reply(stranger(deps.teachers));
  const schoolClass = await createClass(deps.store, {
    teacherId: teacher.id,
    settings: { ...USUAL, title, zone, language: readerLanguage() },
    botId: deps.botId,
    now: deps.clock.now(),
  });
  await fulfilled(deps, userId);
  await sendScreen(deps, userId, timesScreen(schoolClass));
  const next = { classId: schoolClass.id, kind: 'askFor', what: 'roster' } as const;
  await reply(texts.classMade(), [
    [button(BUTTONS.addChildren, next)],
    [button(BUTTONS.plan, { kind: 'plan', classId: schoolClass.id }), back(schoolClass.id)],
  ]);
}

function time(text: string): TimeOfDay {
  const parsed = parseTimeOfDay(text);
  if (!parsed) throw new TypeError(`${text} is not a time of day`);
  return parsed;
}
