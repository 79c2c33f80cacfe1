import { AppError } from '../../db/index.ts';
import { readCode, type TypedCode } from '../input/written-code.ts';
import { cancelButton } from '../screens/set-up-screens.ts';
import { stillExpected } from '../texts/help.ts';
import { mistypedCode } from '../texts/print.ts';
import { bookAnswer } from './book-answers.ts';
import { classAnswer } from './class-answers.ts';
import { expected, fulfilled, type Wish, waitingFor } from './expectations.ts';
import { help } from './help.ts';
import { newClassTitle, newClassZone } from './new-class.ts';
import { withCancel } from './open-question.ts';
import { pauseAnswer } from './pace-commands.ts';
import { renameAnswer } from './rename-answer.ts';
import type { Typed } from './say.ts';
import { startCommand } from './start-command.ts';
import { isCommand, TYPED_COMMANDS } from './typed-commands.ts';

/** Hands a typed message to its command, to the question it answers, or to help. Nobody is left without a reply. */
export async function routeText(message: Typed): Promise<void> {
  const [, command, rest = ''] = /^\/([a-z]+)(?:@\w+)?\s*([\s\S]*)$/i.exec(message.text) ?? [];
  if (!command) return answer(message);
  const typed = command.toLowerCase();
  if (typed === 'help') return helpBeside(message);
  // Any other command leaves an open question behind: the person has moved on.
  await fulfilled(message.deps, message.userId);
  return isCommand(typed) ? TYPED_COMMANDS[typed](message, rest.trim()) : help(message, true);
}

/** Help leaves an open question as it is, and says last what is expected. */
async function helpBeside(message: Typed): Promise<void> {
  await help(message, true);
  const wish = await expected(message.deps, message.userId);
  if (wish) await message.reply(stillExpected(waitingFor(wish)), [[cancelButton()]]);
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
    case 'pause':
      return pauseAnswer(message);
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
