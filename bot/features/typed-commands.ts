import { findTeacherByChat } from '../../db/index.ts';
import { showHome } from './class-home.ts';
import { showCommand, stopCommand, timeCommand, todayCommand } from './family-commands.ts';
import { help } from './help.ts';
import { newClassCommand } from './new-class.ts';
import { eraseCommand, myDataCommand } from './rights-taps.ts';
import type { Typed } from './say.ts';
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

async function classCommand(message: Typed): Promise<void> {
  const teacher = await findTeacherByChat(message.deps.store, message.userId);
  return teacher ? showHome(message, teacher.id) : help(message, true);
}
