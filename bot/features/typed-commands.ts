import { findTeacherByChat, listClasses } from '../../db/index.ts';
import { sendScreen } from '../chat/show.ts';
import { showHome } from './class-home.ts';
import { showCommand, stopCommand, timeCommand, todayCommand } from './family-commands.ts';
import { help } from './help.ts';
import { languageCommand } from './language-taps.ts';
import { newClassCommand } from './new-class.ts';
import { readNow } from './now-taps.ts';
import { daysCommand, pauseCommand } from './pace-commands.ts';
import { eraseCommand, myDataCommand } from './rights-taps.ts';
import type { Typed } from './say.ts';
import { settingsCommand } from './settings-taps.ts';
import { shareCommand } from './share-taps.ts';
import { startCommand } from './start-command.ts';
import { teachCommand } from './teach-command.ts';
import { undoCommand } from './undo-taps.ts';

type Command = (message: Typed, rest: string) => Promise<void>;

/** Every command a person can type, and what it does. `rest` is what stands behind it, without spaces at its ends. */
export const TYPED_COMMANDS = {
  start: startCommand,
  today: todayCommand,
  time: timeCommand,
  show: showCommand,
  language: languageCommand,
  settings: settingsCommand,
  share: shareCommand,
  days: daysCommand,
  pause: pauseCommand,
  stop: stopCommand,
  mydata: myDataCommand,
  erase: eraseCommand,
  newclass: newClassCommand,
  class: classCommand,
  undo: undoCommand,
  teach: teachCommand,
  help: (message) => help(message, true),
} as const satisfies Readonly<Record<string, Command>>;

/** The name of a command, without its slash. */
export type CommandName = keyof typeof TYPED_COMMANDS;

/** Whether there is such a command. */
export function isCommand(word: string): word is CommandName {
  return Object.hasOwn(TYPED_COMMANDS, word);
}

/** `/class now` leads straight to how the class stands today, where there is one class alone. */
async function classCommand(message: Typed, rest: string): Promise<void> {
  const { deps, userId } = message;
  const teacher = await findTeacherByChat(deps.store, userId);
  if (!teacher) return help(message, true);
  const [only, ...others] = await listClasses(deps.store, teacher.id);
  if (rest.toLowerCase() !== 'now' || !only || others.length > 0) {
    return showHome(message, teacher.id);
  }
  const now = await readNow(deps, { teacherId: teacher.id, classId: only.id });
  await sendScreen(deps, userId, now);
}
