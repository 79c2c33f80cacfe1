import { findHelperByChat, findTeacherByChat, listFamilyChildren } from '../../db/index.ts';
import { readCode } from '../input/written-code.ts';
import { familyHelp, stranger } from '../texts/family.ts';
import { mistypedCode } from '../texts/print.ts';
import { teacherHelp } from '../texts/teacher.ts';
import { classAnswer } from './class-answers.ts';
import { showHome } from './class-home.ts';
import { expected, fulfilled } from './expectations.ts';
import { showCommand, stopCommand, timeCommand, todayCommand } from './family-commands.ts';
import { newClassCommand, newClassTitle, newClassZone } from './new-class.ts';
import type { Typed } from './say.ts';
import { startCommand } from './start-command.ts';

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
    default:
      return help(message);
  }
}

async function answer(message: Typed): Promise<void> {
  const typed = readCode(message.text);
  // Nothing else that somebody is asked for passes a code's check.
  if (typed?.kind === 'code') return openCode(message, typed.code);
  const wish = await expected(message.deps, message.userId);
  switch (wish?.kind) {
    case 'new_title':
      return newClassTitle(message);
    case 'new_zone':
      return newClassZone(message, wish.data.title);
    case 'class':
      return classAnswer(message, wish.data);
    default:
      return typed ? message.reply(mistypedCode(typed.letters)) : help(message);
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
  return help(message);
}

async function help({ deps, userId, reply }: Typed): Promise<void> {
  const helper = await findHelperByChat(deps.store, userId);
  const children = helper ? await listFamilyChildren(deps.store, helper.id) : [];
  if (children.length > 0) return reply(familyHelp(children));
  const teacher = await findTeacherByChat(deps.store, userId);
  return reply(teacher ? teacherHelp() : stranger());
}
