import type { Api } from 'grammy';
import type { Message } from 'grammy/types';
import type { Clock, Log, Store } from '../../db/index.ts';

/** What is needed to put a screen before somebody. */
export interface ChatDeps {
  readonly api: Api;
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly botId: number;
}

/** A message that can be changed. `shown` is what it shows now, as far as we know. */
export interface Place {
  readonly chatId: number;
  readonly messageId: number;
  readonly shown: Shown;
}

/** Whether a message is text, a picture or clip (by the service's unique id of its file), or not known to us. */
export type Shown =
  | { readonly kind: 'text' }
  | { readonly kind: 'picture'; readonly uniqueId: string }
  | { readonly kind: 'unknown' };

/** What a message shows, read off the message itself. */
export function shownIn(message: Pick<Message, 'photo' | 'video' | 'text'>): Shown {
  const file = message.photo?.at(-1) ?? message.video;
  if (file) return { kind: 'picture', uniqueId: file.file_unique_id };
  return message.text === undefined ? { kind: 'unknown' } : { kind: 'text' };
}
