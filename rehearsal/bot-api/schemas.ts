import { z } from 'zod';
import { chatId, entities, flag, integer, structured, text } from './values.ts';

/** An object whose parts are read elsewhere or not at all. */
const anything = structured(z.record(z.string(), z.unknown()));

/** What every sending method takes besides its content. All but the first and the last two are without effect here. */
const copying = {
  chat_id: chatId,
  message_thread_id: integer.optional(),
  direct_messages_topic_id: integer.optional(),
  disable_notification: flag.optional(),
  protect_content: flag.optional(),
  allow_paid_broadcast: flag.optional(),
  message_effect_id: text.optional(),
  suggested_post_parameters: anything.optional(),
  reply_parameters: structured(
    z.object({ message_id: integer, allow_sending_without_reply: flag.optional() }),
  ).optional(),
  reply_markup: anything.optional(),
};

const sending = { ...copying, business_connection_id: text.optional() };

const caption = {
  caption: text.optional(),
  parse_mode: z.string().optional(),
  caption_entities: entities.optional(),
  show_caption_above_media: flag.optional(),
};

/** Which message an edit means. Inline messages do not exist here. */
const edited = {
  business_connection_id: text.optional(),
  chat_id: chatId.optional(),
  message_id: integer.optional(),
  inline_message_id: text.optional(),
  reply_markup: anything.optional(),
};

const { show_caption_above_media: _, ...plainCaption } = caption;

/** What the sender says of a video. The last four have no effect here. */
const videoShape = {
  width: integer.optional(),
  height: integer.optional(),
  duration: integer.optional(),
  supports_streaming: flag.optional(),
  thumbnail: z.string().optional(),
  cover: z.string().optional(),
  start_timestamp: integer.optional(),
};

/** The new file of an edited message. What only videos have is left unread for other kinds. */
export const inputMedia = z.object({
  ...caption,
  ...videoShape,
  type: z.string(),
  media: z.string(),
  has_spoiler: flag.optional(),
  disable_content_type_detection: flag.optional(),
});

const command = z.object({
  command: z.string().regex(/^[a-z0-9_]{1,32}$/, 'BOT_COMMAND_INVALID'),
  description: z
    .string()
    .min(1, 'BOT_COMMAND_DESCRIPTION_INVALID')
    .max(256, 'BOT_COMMAND_DESCRIPTION_INVALID'),
});

/** Parameters of every method the rehearsal answers, by the method's name. Unknown ones are ignored. */
export const schemas = {
  getMe: z.object({}),
  getUpdates: z.object({
    offset: integer.optional(),
    limit: integer.optional(),
    timeout: integer.optional(),
    allowed_updates: structured(z.array(z.string())).optional(),
  }),
  setWebhook: z.object({
    url: text,
    certificate: z.string().optional(),
    ip_address: z.string().optional(),
    max_connections: integer.optional(),
    allowed_updates: structured(z.array(z.string())).optional(),
    drop_pending_updates: flag.optional(),
    secret_token: text.optional(),
  }),
  deleteWebhook: z.object({ drop_pending_updates: flag.optional() }),
  getWebhookInfo: z.object({}),
  setMyCommands: z.object({
    commands: structured(z.array(command).max(100, 'BOT_COMMANDS_TOO_MUCH')),
    scope: structured(
      z.object({ type: z.string(), chat_id: chatId.optional(), user_id: integer.optional() }),
    ).optional(),
    language_code: z.string().optional(),
  }),
  sendMessage: z.object({
    ...sending,
    text,
    parse_mode: z.string().optional(),
    entities: entities.optional(),
    link_preview_options: anything.optional(),
  }),
  sendPhoto: z.object({ ...sending, ...caption, photo: z.string(), has_spoiler: flag.optional() }),
  sendVideo: z.object({
    ...sending,
    ...caption,
    ...videoShape,
    video: z.string(),
    has_spoiler: flag.optional(),
  }),
  sendDocument: z.object({
    ...sending,
    ...plainCaption,
    document: z.string(),
    thumbnail: z.string().optional(),
    disable_content_type_detection: flag.optional(),
  }),
  sendVoice: z.object({
    ...sending,
    ...plainCaption,
    voice: z.string(),
    duration: integer.optional(),
  }),
  copyMessage: z.object({
    ...copying,
    ...caption,
    from_chat_id: chatId,
    message_id: integer,
    video_start_timestamp: integer.optional(),
  }),
  editMessageText: z.object({
    ...edited,
    text: text.optional(),
    parse_mode: z.string().optional(),
    entities: entities.optional(),
    link_preview_options: anything.optional(),
    rich_message: anything.optional(),
  }),
  editMessageCaption: z.object({ ...edited, ...caption }),
  editMessageMedia: z.object({ ...edited, media: structured(inputMedia) }),
  editMessageReplyMarkup: z.object(edited),
  deleteMessage: z.object({ chat_id: chatId, message_id: integer }),
  answerCallbackQuery: z.object({
    callback_query_id: text,
    text: text.optional(),
    show_alert: flag.optional(),
    url: z.string().optional(),
    cache_time: integer.optional(),
  }),
  sendChatAction: z.object({
    business_connection_id: text.optional(),
    chat_id: chatId,
    message_thread_id: integer.optional(),
    action: z.string(),
  }),
  getFile: z.object({ file_id: z.string() }),
};

export type MethodName = keyof typeof schemas;

/** A method's parameters after reading. */
export type Params<M extends MethodName> = z.output<(typeof schemas)[M]>;
