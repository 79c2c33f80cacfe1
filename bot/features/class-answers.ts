import {
  AppError,
  type ClassSettings,
  getClass,
  listChildren,
  MAX_CHILDREN,
  type TeacherScope,
  updateClass,
} from '../../db/index.ts';
import { parseTimeOfDay } from '../../drills/index.ts';
import { oneLine } from '../input/one-line.ts';
import { parseRoster } from '../input/roster.ts';
import { zonesNamed } from '../input/zone-text.ts';
import { back } from '../screens/class-screens.ts';
import { errorText } from '../texts/errors.ts';
import { quote } from '../texts/quote.ts';
import * as roster from '../texts/roster.ts';
import { severalZones } from '../texts/set-up.ts';
import * as texts from '../texts/teacher.ts';
import { lines } from '../texts/words.ts';
import { addToClass } from './add-roster.ts';
import { readBreakAnswer } from './break-answer.ts';
import { type ClassQuestion, fulfilled } from './expectations.ts';
import { readGreeting } from './greeting-answer.ts';
import type { Typed } from './say.ts';
import { teacherScope } from './teacher-scope.ts';

/** Reads an answer about a class. True when it was used; false when it was refused and the question stands. */
type Reader = (message: Typed, scope: TeacherScope) => Promise<boolean>;

/**
 * Takes what a teacher typed about a class. A bad value gets a reply that names it, the range and the remedy, and the
 * question stays open, so that the next message is the next try.
 */
export async function classAnswer(
  message: Typed,
  wish: { classId: string; question: ClassQuestion },
): Promise<void> {
  const { deps, userId } = message;
  const scope = await teacherScope(deps.store, userId, wish.classId);
  await getClass(deps.store, scope);
  let used: boolean;
  try {
    used = await READERS[wish.question](message, scope);
  } catch (error) {
    if (!(error instanceof AppError) || error.code !== 'invalid') throw error;
    await message.reply(lines(quote(message.text), errorText(error)));
    return;
  }
  if (used) await fulfilled(deps, userId);
}

const READERS: Readonly<Record<ClassQuestion, Reader>> = {
  title: (message, scope) => change(message, scope, { title: oneLine(message.text) }),
  zone: async (message, scope) => {
    const [zone, ...others] = zonesNamed(message.text);
    if (zone && others.length === 0) return change(message, scope, { zone });
    await message.reply(zone ? severalZones([zone, ...others]) : texts.badZone(message.text));
    return false;
  },
  evening: (message, scope) => changeTime(message, scope, 'eveningTime'),
  nudge: (message, scope) => changeTime(message, scope, 'nudgeTime'),
  digest: (message, scope) => changeTime(message, scope, 'digestTime'),
  roster: readRoster,
  greeting: readGreeting,
  break: readBreakAnswer,
};

async function change(
  message: Typed,
  scope: TeacherScope,
  changes: Partial<ClassSettings>,
): Promise<boolean> {
  await updateClass(message.deps.store, scope, { changes, now: message.deps.clock.now() });
  await saved(message, scope);
  return true;
}

async function changeTime(
  message: Typed,
  scope: TeacherScope,
  field: 'eveningTime' | 'nudgeTime' | 'digestTime',
): Promise<boolean> {
  const time = parseTimeOfDay(message.text);
  if (time) return change(message, scope, { [field]: time });
  await message.reply(texts.badClassTime(message.text));
  return false;
}

async function saved(message: Typed, scope: TeacherScope): Promise<void> {
  await message.reply(texts.stored(), [[back(scope.classId)]]);
}

async function readRoster(message: Typed, scope: TeacherScope): Promise<boolean> {
  const { deps, text, reply } = message;
  const present = await listChildren(deps.store, scope);
  const { nicknames, problems } = parseRoster(
    text,
    present.map((child) => child.nickname),
  );
  if (problems.length > 0) {
    await reply(roster.rosterProblems(problems));
    return false;
  }
  if (nicknames.length === 0) {
    await reply(roster.rosterEmpty());
    return false;
  }
  if (nicknames.length + present.length > MAX_CHILDREN) {
    await reply(roster.rosterTooMany(nicknames.length, present.length));
    return false;
  }
  await addToClass(message, scope, nicknames);
  return true;
}
