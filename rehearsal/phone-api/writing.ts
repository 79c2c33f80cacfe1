import { TEXT_LIMIT } from '../bot-api/formatted-text.ts';
import { trimmed, withDetected } from '../entities.ts';
import { addMessage, findMessage, removeMessage, type Service } from '../service.ts';
import type { Account, Content, StoredMessage } from '../state.ts';
import { UPDATE_LIFETIME_MS } from '../updates.ts';
import { toMessage } from '../wire.ts';
import { requireAccount, requireActive, setBlocked } from './accounts.ts';
import { PhoneError } from './phone-error.ts';

const PAYLOAD = /^[A-Za-z0-9_-]{1,64}$/;

/** Brings what a person sent into the chat and to the bot. */
export function deliver(service: Service, account: Account, content: Content): StoredMessage {
  const message = addMessage(service, { chatId: account.id, from: 'person', content });
  service.updates.push({ message: toMessage(service, message) }, UPDATE_LIFETIME_MS);
  return message;
}

function requireWritable(service: Service, id: number): Account {
  const account = requireActive(service, id);
  if (account.blocked)
    throw new PhoneError(409, 'This phone has blocked the bot. Unblock it first.');
  return account;
}

/** The account of a phone that can send more than /start now. Throws a 409 saying why it cannot. */
export function requireOpened(service: Service, id: number): Account {
  const account = requireWritable(service, id);
  if (account.opened) return account;
  throw new PhoneError(409, 'This phone has not opened the chat yet: press start or open a link.');
}

/** Sends text as the person. The first message of a chat has to be a /start. */
export function say(service: Service, id: number, text: string): StoredMessage {
  const cut = trimmed(text, []);
  const starts = /^\/start(\s|$)/.test(cut.text);
  const account = starts ? requireWritable(service, id) : requireOpened(service, id);
  if (cut.text === '') throw new PhoneError(400, 'An empty message cannot be sent.');
  const length = [...cut.text].length;
  if (length > TEXT_LIMIT) {
    throw new PhoneError(
      400,
      `A message holds up to ${TEXT_LIMIT} characters and this one has ${length}. Send it in parts.`,
    );
  }
  account.opened = true;
  return deliver(service, account, { text: cut.text, entities: withDetected(cut.text, []) });
}

/** The payload of a link to this bot, written with or without "https://", or the payload itself. Throws a 400 for links to elsewhere. */
export function startPayload(botUsername: string, linkOrPayload: string): string {
  if (PAYLOAD.test(linkOrPayload)) return linkOrPayload;
  const link = linkOrPayload.trim();
  const address = link.includes('://') ? link : `https://${link}`;
  const url = URL.canParse(address) ? new URL(address) : undefined;
  if (url?.host !== 't.me' || url.pathname.slice(1).toLowerCase() !== botUsername.toLowerCase()) {
    throw new PhoneError(400, `Not a link to this bot: https://t.me/${botUsername}?start=...`);
  }
  const payload = url.searchParams.get('start') ?? '';
  if (payload !== '' && !PAYLOAD.test(payload)) {
    throw new PhoneError(400, 'A start payload holds 1 to 64 of A-Z, a-z, 0-9, "_" and "-".');
  }
  return payload;
}

/** Opens the chat by a link: unblocks the bot and sends `/start` with the payload. */
export function openLink(service: Service, id: number, linkOrPayload: string): StoredMessage {
  const payload = startPayload(service.bot.username, linkOrPayload);
  const account = requireActive(service, id);
  if (account.blocked) setBlocked(service, id, false);
  return say(service, id, payload === '' ? '/start' : `/start ${payload}`);
}

/** Deletes a message from the person's chat, for the bot too. */
export function deleteMessage(service: Service, id: number, messageId: number): void {
  requireAccount(service, id);
  const message = findMessage(service, id, messageId);
  if (message === undefined)
    throw new PhoneError(404, `There is no message ${messageId} on this phone.`);
  removeMessage(service, message);
}
