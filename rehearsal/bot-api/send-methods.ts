import { addMessage, type Service } from '../service.ts';
import type { Content } from '../state.ts';
import { toMessage } from '../wire.ts';
import { writableChat } from './access.ts';
import { badRequest } from './envelope.ts';
import { captionText, messageText } from './formatted-text.ts';
import { type MediaSource, mediaFile } from './media.ts';
import { method } from './method.ts';
import { readMarkup } from './reply-markup.ts';
import type { Params } from './schemas.ts';
import { givenShape } from './video-file.ts';

function deliver(
  service: Service,
  chatId: number,
  content: Content,
  markup: Record<string, unknown> | undefined,
): Record<string, unknown> {
  const account = writableChat(service, chatId);
  const message = addMessage(service, {
    chatId: account.id,
    from: 'bot',
    content,
    ...readMarkup(markup),
  });
  account.received += 1;
  return toMessage(service, message);
}

const sendMessage = method('sendMessage', (service, params) => {
  const content = messageText({
    text: params.text,
    parseMode: params.parse_mode,
    entities: params.entities,
  });
  return deliver(service, params.chat_id, content, params.reply_markup);
});

async function sendFile(
  service: Service,
  params: Omit<Params<'sendDocument'>, 'document'>,
  file: MediaSource,
): Promise<Record<string, unknown>> {
  writableChat(service, params.chat_id);
  readMarkup(params.reply_markup);
  const caption = captionText({
    text: params.caption ?? '',
    parseMode: params.parse_mode,
    entities: params.caption_entities,
  });
  const record = await mediaFile(service, file);
  return deliver(
    service,
    params.chat_id,
    { ...caption, file: record.uniqueId },
    params.reply_markup,
  );
}

const sendPhoto = method('sendPhoto', (service, params, { uploads }) =>
  sendFile(service, params, { value: params.photo, fileClass: 'Photo', uploads }),
);

const sendDocument = method('sendDocument', (service, params, { uploads }) =>
  sendFile(service, params, { value: params.document, fileClass: 'Document', uploads }),
);

const sendVideo = method('sendVideo', (service, params, { uploads }) =>
  sendFile(service, params, {
    value: params.video,
    fileClass: 'Video',
    uploads,
    shape: givenShape(params),
  }),
);

/** SPEC sendChatAction. */
const ACTIONS = [
  'typing',
  'upload_photo',
  'record_video',
  'upload_video',
  'record_voice',
  'upload_voice',
  'upload_document',
  'choose_sticker',
  'find_location',
  'record_video_note',
  'upload_video_note',
];

const sendChatAction = method('sendChatAction', (service, params) => {
  writableChat(service, params.chat_id);
  if (!ACTIONS.includes(params.action)) throw badRequest('wrong parameter action in request');
  return true;
});

/** Methods that bring something new into a chat. */
export const sendMethods = { sendMessage, sendPhoto, sendVideo, sendDocument, sendChatAction };
