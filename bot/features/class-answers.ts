import {
  AppError,
  addBreak,
  addChildren,
  type ClassSettings,
  getClass,
  issueSlips,
  listChildren,
  MAX_CHILDREN,
  parseZone,
  setBook,
  type TeacherScope,
  updateClass,
} from '../../db/index.ts';
import { parseBreak, parseTimeOfDay } from '../../drills/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import { parseBookText } from '../input/book-text.ts';
import { oneLine } from '../input/one-line.ts';
import { parseRoster } from '../input/roster.ts';
import { back } from '../screens/class-screens.ts';
import { button } from '../screens/screen.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { errorText } from '../texts/errors.ts';
import { quote } from '../texts/quote.ts';
import * as roster from '../texts/roster.ts';
import * as texts from '../texts/teacher.ts';
import { lines } from '../texts/words.ts';
import { type ClassQuestion, fulfilled } from './expectations.ts';
import type { Typed } from './say.ts';
import { sendLinks } from './send-links.ts';
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
    const zone = parseZone(message.text);
    if (zone) return change(message, scope, { zone });
    await message.reply(texts.badZone(message.text));
    return false;
  },
  evening: (message, scope) => changeTime(message, scope, 'eveningTime'),
  nudge: (message, scope) => changeTime(message, scope, 'nudgeTime'),
  digest: (message, scope) => changeTime(message, scope, 'digestTime'),
  roster: readRoster,
  book: async (message, scope) => {
    const book = parseBookText(message.text);
    if (!book) {
      await message.reply(texts.badBook());
      return false;
    }
    await setBook(message.deps.store, scope, { book, now: message.deps.clock.now() });
    await saved(message, scope);
    return true;
  },
  break: async (message, scope) => {
    const parsed = parseBreak(oneLine(message.text));
    if ('problem' in parsed) {
      await message.reply(texts.badBreak(parsed.problem, parsed.value));
      return false;
    }
    await addBreak(message.deps.store, scope, { ...parsed, now: message.deps.clock.now() });
    await saved(message, scope);
    return true;
  },
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
  const { deps, userId, text, reply } = message;
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
  const now = deps.clock.now();
  const added = await addChildren(deps.store, scope, { nicknames, now });
  // The children are stored: a failure from here on must not have this message read as a roster again.
  await fulfilled(deps, userId);
  const childIds = added.map((child) => child.id);
  try {
    await sendLinks(deps, userId, await issueSlips(deps.store, scope, { childIds, now }));
  } catch (error) {
    const { classId } = scope;
    deps.log.warn({ classId, ...apiProblem(error) }, 'links_failed');
    const toChildren = button(BUTTONS.children, { kind: 'children', classId });
    await reply(roster.rosterAddedWithoutLinks(added.length), [[toChildren]]);
    return true;
  }
  await reply(roster.rosterAdded(added.length), [[back(scope.classId)]]);
  return true;
}
