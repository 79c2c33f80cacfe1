import { findAccount, type Service, unixNow } from '../service.ts';
import type { Account } from '../state.ts';
import { UPDATE_LIFETIME_MS } from '../updates.ts';
import { toChat, toUser } from '../wire.ts';
import { PhoneError } from './phone-error.ts';

export interface NewAccount {
  readonly id: number;
  readonly name: string;
  readonly note?: string | undefined;
  readonly languageCode?: string | undefined;
}

/** The account, or a 404. */
export function requireAccount(service: Service, id: number): Account {
  const account = findAccount(service, id);
  if (account === undefined) throw new PhoneError(404, `There is no phone with the id ${id}.`);
  return account;
}

/** An account that can act, or a 409 saying why not. */
export function requireActive(service: Service, id: number): Account {
  const account = requireAccount(service, id);
  if (account.deactivated) throw new PhoneError(409, 'This account is deactivated.');
  return account;
}

/** Adds a person, or changes name, note and language of the one who has the id. */
export function addAccount(
  service: Service,
  { id, name, note, languageCode }: NewAccount,
): Account {
  const known = findAccount(service, id);
  const account = known ?? {
    id,
    name,
    languageCode: 'en',
    opened: false,
    blocked: false,
    deactivated: false,
    received: 0,
  };
  account.name = name;
  if (note !== undefined) account.note = note;
  if (languageCode !== undefined) account.languageCode = languageCode;
  if (known === undefined) service.state.accounts.push(account);
  service.changed();
  return account;
}

function announceMembership(service: Service, account: Account): void {
  const member = { status: 'member', user: service.bot };
  const kicked = { status: 'kicked', user: service.bot, until_date: 0 };
  const change = {
    chat: toChat(account),
    from: toUser(account),
    date: unixNow(service),
    old_chat_member: account.blocked ? member : kicked,
    new_chat_member: account.blocked ? kicked : member,
  };
  service.updates.push({ my_chat_member: change }, UPDATE_LIFETIME_MS);
}

/** Blocks or unblocks the bot. Tells the bot only when that changes something. */
export function setBlocked(service: Service, id: number, blocked: boolean): void {
  const account = requireActive(service, id);
  if (!account.opened) throw new PhoneError(409, 'This phone has not opened the chat yet.');
  if (account.blocked === blocked) return;
  account.blocked = blocked;
  announceMembership(service, account);
  service.changed();
}

/** Closes the account for good. The bot is not told, as on the service. */
export function deactivate(service: Service, id: number): void {
  requireAccount(service, id).deactivated = true;
  service.changed();
}
