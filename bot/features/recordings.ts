import type { Message } from 'grammy/types';
import { findTeacherByChat, listClasses } from '../../db/index.ts';
import { type Recording, readRecording } from '../input/recording.ts';
import { askToUseScreen } from '../screens/greeting-screens.ts';
import { cancelButton } from '../screens/set-up-screens.ts';
import { noFiles } from '../texts/general.ts';
import { badRecording } from '../texts/greeting.ts';
import { expect, expected, fulfilled } from './expectations.ts';
import { sendGreetingHome, useAsGreeting, wordsOf } from './greetings.ts';
import type { Typed } from './say.ts';
import { teacherScope } from './teacher-scope.ts';

/**
 * A voice note, a video, or something like it. From a teacher it becomes the greeting that was asked for, or waits until the
 * teacher has said what it is for; nobody else's is of use.
 */
export async function takeRecording(said: Typed, message: Message): Promise<void> {
  const { deps, userId } = said;
  const teacher = await findTeacherByChat(deps.store, userId);
  const classes = teacher ? await listClasses(deps.store, teacher.id) : [];
  if (classes.length === 0) return said.reply(noFiles());
  const recording = readRecording(message);
  if (!recording) return said.reply(noFiles());
  const wish = await expected(deps, userId);
  const isAsked = wish?.kind === 'class' && wish.data.question === 'greeting';
  if (!('fileId' in recording)) {
    return said.reply(badRecording(recording), isAsked ? [[cancelButton()]] : []);
  }
  if (isAsked) {
    return useAsAsked(said, wish.data.classId, recording);
  }
  await expect(deps, userId, { kind: 'recording', data: recording });
  const { text, buttons } = askToUseScreen(recording.kind, classes, recording.messageId);
  await said.reply(text, buttons);
}

async function useAsAsked(said: Typed, classId: string, recording: Recording): Promise<void> {
  const { deps, userId } = said;
  const scope = await teacherScope(deps.store, userId, classId);
  const actId = await useAsGreeting(deps, scope, wordsOf(deps, recording));
  await fulfilled(deps, userId);
  await sendGreetingHome(deps, userId, scope, actId);
}
