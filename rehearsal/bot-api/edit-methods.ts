import { isDeepStrictEqual } from 'node:util';
import { findMessage, removeMessage, type Service, unixNow } from '../service.ts';
import type { Button, Content, FileClass, StoredMessage } from '../state.ts';
import { toMessage } from '../wire.ts';
import { editableMessage, openChat } from './access.ts';
import { badRequest } from './envelope.ts';
import { captionText, messageText } from './formatted-text.ts';
import { mediaFile } from './media.ts';
import { method } from './method.ts';
import { readInlineMarkup } from './reply-markup.ts';
import { givenShape } from './video-file.ts';

/** The bot may delete a message while it is younger than this, in seconds (SPEC deleteMessage). */
const DELETE_WINDOW_S = 172_800;

function apply(
  service: Service,
  message: StoredMessage,
  content: Content,
  keyboard: Button[][] | undefined,
): Record<string, unknown> {
  if (
    isDeepStrictEqual(content, message.content) &&
    isDeepStrictEqual(keyboard, message.keyboard)
  ) {
    throw badRequest(
      'message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message',
    );
  }
  message.content = content;
  if (keyboard === undefined) delete message.keyboard;
  else message.keyboard = keyboard;
  message.editDate = unixNow(service);
  message.edits += 1;
  service.changed();
  return toMessage(service, message);
}

const editMessageText = method('editMessageText', (service, params) => {
  const content = messageText({
    text: params.text ?? '',
    parseMode: params.parse_mode,
    entities: params.entities,
  });
  const keyboard = readInlineMarkup(params.reply_markup);
  const message = editableMessage(service, params);
  if (message.content.file !== undefined)
    throw badRequest('there is no text in the message to edit');
  return apply(service, message, content, keyboard);
});

const editMessageCaption = method('editMessageCaption', (service, params) => {
  const caption = captionText({
    text: params.caption ?? '',
    parseMode: params.parse_mode,
    entities: params.caption_entities,
  });
  const keyboard = readInlineMarkup(params.reply_markup);
  const message = editableMessage(service, params);
  const { file } = message.content;
  if (file === undefined) throw badRequest('there is no caption in the message to edit');
  return apply(service, message, { ...caption, file }, keyboard);
});

const MEDIA_CLASSES: ReadonlyMap<string, FileClass> = new Map([
  ['photo', 'Photo'],
  ['video', 'Video'],
  ['document', 'Document'],
]);

const editMessageMedia = method('editMessageMedia', async (service, params, { uploads }) => {
  const { media } = params;
  const fileClass = MEDIA_CLASSES.get(media.type);
  if (fileClass === undefined)
    throw badRequest(`the rehearsal shows photos, videos and documents, not "${media.type}"`);
  const keyboard = readInlineMarkup(params.reply_markup);
  const { file = '' } = editableMessage(service, params).content;
  // That a voice note is what cannot be replaced is from memory.
  if (service.files.find(file)?.fileClass === 'Voice')
    throw badRequest("message media can't be edited");
  const caption = captionText({
    text: media.caption ?? '',
    parseMode: media.parse_mode,
    entities: media.caption_entities,
  });
  const record = await mediaFile(service, {
    value: media.media,
    fileClass,
    uploads,
    shape: givenShape(media),
  });
  // Looked up again: the person may have deleted the message while the file was stored.
  const message = editableMessage(service, params);
  return apply(service, message, { ...caption, file: record.uniqueId }, keyboard);
});

const editMessageReplyMarkup = method('editMessageReplyMarkup', (service, params) => {
  const keyboard = readInlineMarkup(params.reply_markup);
  const message = editableMessage(service, params);
  return apply(service, message, message.content, keyboard);
});

const deleteMessage = method('deleteMessage', (service, params) => {
  const account = openChat(service, params.chat_id);
  const message = findMessage(service, account.id, params.message_id);
  if (message === undefined) throw badRequest('message to delete not found');
  if (unixNow(service) - message.date > DELETE_WINDOW_S) {
    throw badRequest("message can't be deleted for everyone");
  }
  removeMessage(service, message);
  return true;
});

/** Methods that change or remove what a chat already shows. */
export const editMethods = {
  editMessageText,
  editMessageCaption,
  editMessageMedia,
  editMessageReplyMarkup,
  deleteMessage,
};
