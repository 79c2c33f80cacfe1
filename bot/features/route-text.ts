import { AppError, findTeacherByChat } from '../../db/index.ts';
import { readCode, type TypedCode } from '../input/written-code.ts';
import { mistypedCode } from '../texts/print.ts';
import { bookAnswer } from './book-answers.ts';
import { classAnswer } from './class-answers.ts';
import { showHome } from './class-home.ts';
import { expected, fulfilled, type Wish } from './expectations.ts';
import { showCommand, stopCommand, timeCommand, todayCommand } from './family-commands.ts';
import { help } from './help.ts';
import { newClassCommand, newClassTitle, newClassZone } from './new-class.ts';
import { withCancel } from './open-question.ts';
import { renameAnswer } from './rename-answer.ts';
import type { Typed } from './say.ts';
import { startCommand } from './start-command.ts';
import { teachCommand } from './teach-command.ts';
import { undoCommand } from './undo-taps.ts';

/** Hands a typed message to its command, to the question it answers, or to help. Nobody is left without a reply. */
export async function routeText(message: Typed): Promise<void> {
  const [, command, rest = ''] = /^\/([a-z]+)(?:@\w+)?\s*([\s\S]*)$/i.exec(message.text) ?? [];
  if (!command) return answer(message);
  // A command leaves an open question behind: the person has moved on.
  await fulfilled(message.deps, message.userId);
  switch (command.toLowerCase()) {
    case 'start':
      return startCommand(message, rest.trim());
    case 'today':
      return todayCommand(message);
    case 'time':
      return timeCommand(message, rest.trim());
    case 'show':
      return showCommand(message);
    case 'stop':
      return stopCommand(message);
    case 'newclass':
      return newClassCommand(message);
    case 'class':
      return classCommand(message);
    case 'undo':
      return undoCommand(message);
    case 'teach':
      return teachCommand(message);
    default:
      return help(message, true);
  }
}

async function answer(message: Typed): Promise<void> {
  const typed = readCode(message.text);
  // Nothing else that somebody is asked for passes a code's check.
  if (typed?.kind === 'code') return openCode(message, typed.code);
  const wish = await expected(message.deps, message.userId);
  if (wish) return answerOrDrop(message, wish, typed);
  return typed ? message.reply(mistypedCode(typed.letters)) : help(message, false);
}

type Mistyped = Extract<TypedCode, { kind: 'mistyped' }>;

/** Takes an answer. A question about something that is not there any more is not asked again. */
async function answerOrDrop(message: Typed, wish: Wish, typed: Mistyped | null): Promise<void> {
  try {
    await answerTo(withCancel(message), wish, typed);
  } catch (error) {
    const isGone = error instanceof AppError && error.code === 'not_found';
    if (isGone) await fulfilled(message.deps, message.userId);
    throw error;
  }
}

/** What was asked for. One that cannot be taken leaves the question open, with a way to leave it. */
async function answerTo(message: Typed, wish: Wish, typed: Mistyped | null): Promise<void> {
  switch (wish.kind) {
    case 'new_title':
      return newClassTitle(message);
    case 'new_zone':
      return newClassZone(message, wish.data.title);
    case 'class':
      return classAnswer(message, wish.data);
    case 'book':
      return bookAnswer(message, wish.data);
    case 'nickname':
      return renameAnswer(message, wish.data);
    default:
      return typed ? message.reply(mistypedCode(typed.letters)) : help(message, false);
  }
}

/** A join code typed off paper does what its link does. */
async function openCode(message: Typed, code: string): Promise<void> {
  await fulfilled(message.deps, message.userId);
  return startCommand(message, code);
}

async function classCommand(message: Typed): Promise<void> {
  const teacher = await findTeacherByChat(message.deps.store, message.userId);
  if (teacher) return showHome(message, teacher.id);
  return help(message, true);
}
