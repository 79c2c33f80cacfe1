import { GREETING_LIMITS, type TeacherScope } from '../../db/index.ts';
import { greetingText } from '../input/greeting-text.ts';
import { badGreetingText } from '../texts/greeting.ts';
import { fulfilled } from './expectations.ts';
import { sendGreetingHome, useAsGreeting } from './greetings.ts';
import type { Typed } from './say.ts';

/** Takes a typed greeting. False when it was refused and the question stands. */
export async function readGreeting(message: Typed, scope: TeacherScope): Promise<boolean> {
  const { deps, userId } = message;
  const body = greetingText(message.text);
  const { length } = [...body];
  if (length < 1 || length > GREETING_LIMITS.textLength) {
    await message.reply(badGreetingText(body, length));
    return false;
  }
  const actId = await useAsGreeting(deps, scope, { kind: 'text', body, botId: null });
  // It is stored: a failure from here on must not have another message read as a greeting.
  await fulfilled(deps, userId);
  await sendGreetingHome(deps, userId, scope, actId);
  return true;
}
