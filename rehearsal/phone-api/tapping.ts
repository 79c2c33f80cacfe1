import { isCallbackData } from '../bot-api/reply-markup.ts';
import { findMessage, type Service } from '../service.ts';
import type { Account, StoredMessage } from '../state.ts';
import { TAP_LIFETIME_MS } from '../updates.ts';
import { toMessage, toUser } from '../wire.ts';
import { requireAccount, requireActive } from './accounts.ts';
import { PhoneError } from './phone-error.ts';

function requireMessage(service: Service, chatId: number, messageId: number): StoredMessage {
  const message = findMessage(service, chatId, messageId);
  if (message === undefined)
    throw new PhoneError(404, `There is no message ${messageId} on this phone.`);
  return message;
}

function buttonList(message: StoredMessage): string {
  const labels = (message.keyboard ?? []).flat().map(({ text }) => `"${text}"`);
  return labels.length === 0 ? 'It has no buttons.' : `It has: ${labels.join(', ')}.`;
}

function deliver(service: Service, account: Account, message: StoredMessage, data: string): string {
  if (!isCallbackData(data)) throw new PhoneError(400, 'A button carries 1 to 64 bytes.');
  const id = String(4_000_000_000_000_000_000n + BigInt(service.state.nextQueryNumber++));
  const at = service.now().getTime();
  service.state.queries.push({ id, accountId: account.id, messageId: message.messageId, data, at });
  const query = {
    id,
    from: toUser(account),
    message: toMessage(service, message),
    chat_instance: String(message.chatId),
    data,
  };
  service.updates.push({ callback_query: query }, TAP_LIFETIME_MS);
  service.changed();
  return id;
}

/** Taps a button that is on the message now. Returns the id the answer will carry. */
export function tap(service: Service, id: number, messageId: number, data: string): string {
  const account = requireActive(service, id);
  const message = requireMessage(service, id, messageId);
  const shown = (message.keyboard ?? []).flat().some((button) => button.callback_data === data);
  if (!shown)
    throw new PhoneError(409, `Message ${messageId} has no such button. ${buttonList(message)}`);
  return deliver(service, account, message, data);
}

/** Sends a payload no button carries, as a tampered phone could. */
export function rawCallback(service: Service, id: number, messageId: number, data: string): string {
  return deliver(service, requireActive(service, id), requireMessage(service, id, messageId), data);
}

/** Sends a tap of one person on a message in another one's chat. */
export function forgeTap(
  service: Service,
  tapped: { fromAccountId: number; chatId: number; messageId: number; data: string },
): string {
  requireAccount(service, tapped.chatId);
  const message = requireMessage(service, tapped.chatId, tapped.messageId);
  return deliver(service, requireActive(service, tapped.fromAccountId), message, tapped.data);
}
