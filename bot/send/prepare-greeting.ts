import {
  type Delivery,
  getRunningClass,
  greetingToSend,
  oweGreetingNotice,
} from '../../db/index.ts';
import { postGreeting } from '../chat/post-greeting.ts';
import { postScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { greetingNotSent } from '../texts/greeting.ts';

/**
 * The greeting that goes before a helper's evening, or to a teacher the word that it cannot be sent. Null when it is not wanted
 * any more, and when it was recorded for another bot, whose files this one cannot send: then the teachers are told, once.
 */
export async function prepareGreeting(
  deps: BotDeps,
  delivery: Delivery,
): Promise<(() => Promise<number>) | null> {
  const { store, botId, clock, log } = deps;
  const { chatId, classId } = delivery;
  const schoolClass = await getRunningClass(store, classId);
  if (delivery.to === 'teacher') {
    return () => postScreen(deps, chatId, { text: greetingNotSent(schoolClass), buttons: [] });
  }
  const greeting = await greetingToSend(store, delivery);
  if (!greeting) return null;
  const { words } = greeting;
  if (words.kind !== 'text' && words.botId !== botId) {
    log.warn({ classId }, 'greeting_of_another_bot');
    await oweGreetingNotice(store, delivery, { greeting, now: clock.now() });
    return null;
  }
  return () => postGreeting(deps, chatId, words, schoolClass);
}
