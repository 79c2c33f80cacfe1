import { findMessage } from '../service.ts';
import { openChat } from './access.ts';
import { checkAddress, deliver } from './deliver.ts';
import { badRequest } from './envelope.ts';
import { captionText } from './formatted-text.ts';
import { method } from './method.ts';

/**
 * Sends what another message says, without its buttons; a caption given replaces that of a file and is left unread for a
 * text. That buttons stay behind, and the words of the refusal, are from memory.
 */
const copyMessage = method('copyMessage', (service, params) => {
  checkAddress(service, params);
  const from = openChat(service, params.from_chat_id);
  const original = findMessage(service, from.id, params.message_id);
  if (original === undefined) throw badRequest('message to copy not found');
  const { content } = original;
  const caption = captionText({
    text: params.caption ?? '',
    parseMode: params.parse_mode,
    entities: params.caption_entities,
  });
  const isRetold = content.file !== undefined && params.caption !== undefined;
  const copied = deliver(service, params, isRetold ? { ...content, ...caption } : content);
  return { message_id: copied.message_id };
});

export const copyMethods = { copyMessage };
