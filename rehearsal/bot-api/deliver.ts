import { addMessage, findMessage, type Service } from '../service.ts';
import type { Content } from '../state.ts';
import { toMessage } from '../wire.ts';
import { writableChat } from './access.ts';
import { badRequest } from './envelope.ts';
import { readMarkup } from './reply-markup.ts';
import type { Params } from './schemas.ts';

/** Where a new message goes, what it replies to and which buttons it has. */
export type Addressed = Pick<
  Params<'sendMessage'>,
  'chat_id' | 'reply_parameters' | 'reply_markup'
>;

function repliedId(service: Service, { chat_id, reply_parameters }: Addressed): number | undefined {
  if (reply_parameters === undefined) return undefined;
  const { message_id: id, allow_sending_without_reply: isOptional } = reply_parameters;
  if (findMessage(service, chat_id, id) !== undefined) return id;
  if (isOptional === true) return undefined;
  throw badRequest('message to be replied not found');
}

/** Everything that can be refused before the content is looked at. */
export function checkAddress(service: Service, addressed: Addressed): void {
  writableChat(service, addressed.chat_id);
  repliedId(service, addressed);
  readMarkup(addressed.reply_markup);
}

/** Brings a new message into a chat. Answers with the service's Message object. */
export function deliver(
  service: Service,
  addressed: Addressed,
  content: Content,
): Record<string, unknown> {
  const account = writableChat(service, addressed.chat_id);
  const replyTo = repliedId(service, addressed);
  const message = addMessage(service, {
    chatId: account.id,
    from: 'bot',
    content,
    ...(replyTo === undefined ? {} : { replyTo }),
    ...readMarkup(addressed.reply_markup),
  });
  account.received += 1;
  return toMessage(service, message);
}
