import { FormattedString } from '@grammyjs/parse-mode';
import type { GreetingWords, SchoolClass } from '../../db/index.ts';
import { greetingHeading, greetingMessage } from '../texts/greeting.ts';
import type { ChatDeps } from './chat.ts';
import { postScreen } from './show.ts';

/**
 * Sends a teacher's greeting as a family gets it, and returns the message's id; every failure is the caller's. A recording is
 * sent on by the id of its file: nothing is uploaded again.
 */
export async function postGreeting(
  deps: ChatDeps,
  chatId: number,
  words: GreetingWords,
  schoolClass: Pick<SchoolClass, 'title'>,
): Promise<number> {
  if (words.kind === 'text') {
    return postScreen(deps, chatId, {
      text: greetingMessage(schoolClass, words.body),
      buttons: [],
    });
  }
  const { caption, caption_entities } = new FormattedString(greetingHeading(schoolClass));
  const under = { caption, caption_entities };
  const sent =
    words.kind === 'voice'
      ? await deps.api.sendVoice(chatId, words.body, under)
      : await deps.api.sendVideo(chatId, words.body, under);
  return sent.message_id;
}
