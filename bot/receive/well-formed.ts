import { z } from 'zod';

const id = z.int();
const chat = z.looseObject({ id, type: z.string() });
// Groups and channels have numbers below nought; people have not.
const sender = z.looseObject({ id: id.positive() });
const entity = z.looseObject({ type: z.string(), offset: z.int(), length: z.int() });
const file = z.looseObject({
  file_id: z.string(),
  file_size: z.number().optional(),
  file_name: z.string().optional(),
  mime_type: z.string().optional(),
  duration: z.number().optional(),
});
const message = z.looseObject({
  message_id: z.int(),
  date: z.int(),
  chat,
  from: sender.optional(),
  text: z.string().optional(),
  caption: z.string().optional(),
  entities: z.array(entity).optional(),
  caption_entities: z.array(entity).optional(),
  voice: file.optional(),
  video: file.optional(),
  video_note: file.optional(),
  audio: file.optional(),
  document: file.optional(),
});
const tap = z.looseObject({
  id: z.string().min(1),
  from: sender,
  data: z.string().optional(),
  message: z.looseObject({ message_id: z.int(), date: z.int(), chat }).optional(),
});
const membership = z.looseObject({
  chat,
  from: sender,
  new_chat_member: z.looseObject({ status: z.string() }),
});

/** What we read of an update (Bot API, "Update", "Message", "CallbackQuery", "ChatMemberUpdated"); the rest may be anything. */
const update = z.looseObject({
  update_id: z.int(),
  message: message.optional(),
  callback_query: tap.optional(),
  my_chat_member: membership.optional(),
});

const query = z.looseObject({ callback_query: z.looseObject({ id: z.string().min(1) }) });

/**
 * Whether an update has the shape that the service promises, in all that we read of it. One that has not would fail again at
 * every try and hold up what its sender does next.
 *
 * @example
 * isWellFormed({ update_id: 1, message: { text: 7 } }); // false
 */
export function isWellFormed(value: unknown): boolean {
  return update.safeParse(value).success;
}

/** The query to answer in a tap of whatever shape; null when there is none. */
export function queryToAnswer(value: unknown): string | null {
  const found = query.safeParse(value);
  return found.success ? found.data.callback_query.id : null;
}
