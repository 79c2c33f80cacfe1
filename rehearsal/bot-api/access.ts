import { findAccount, findMessage, type Service } from '../service.ts';
import type { Account, StoredMessage } from '../state.ts';
import { badRequest, forbidden } from './envelope.ts';

/** The account behind a chat. Throws a 400 unless the person has opened the chat once. */
export function openChat(service: Service, chatId: number): Account {
  const account = findAccount(service, chatId);
  if (account === undefined || !account.opened) throw badRequest('chat not found');
  return account;
}

/** The account behind a chat the bot may write to. Throws a 403 when blocked or deactivated. */
export function writableChat(service: Service, chatId: number): Account {
  const account = openChat(service, chatId);
  if (account.deactivated) throw forbidden('user is deactivated');
  if (account.blocked) throw forbidden('bot was blocked by the user');
  return account;
}

interface Target {
  readonly chat_id?: number | undefined;
  readonly message_id?: number | undefined;
}

/** The bot's own message an edit means. A block does not stop edits of what was already delivered. */
export function editableMessage(service: Service, target: Target): StoredMessage {
  if (target.chat_id === undefined) throw badRequest('chat_id is empty');
  if (target.message_id === undefined) throw badRequest('message identifier is not specified');
  const account = openChat(service, target.chat_id);
  if (account.deactivated) throw forbidden('user is deactivated');
  const message = findMessage(service, account.id, target.message_id);
  if (message === undefined) throw badRequest('message to edit not found');
  if (message.from !== 'bot' || message.otherMarkup !== undefined)
    throw badRequest("message can't be edited");
  return message;
}
