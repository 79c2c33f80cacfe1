import type { FileStore } from './files.ts';
import type { Account, State, StoredMessage } from './state.ts';
import type { UpdateQueue } from './updates.ts';
import type { WebhookSender } from './webhook.ts';

export interface BotUser {
  readonly id: number;
  readonly is_bot: true;
  readonly first_name: string;
  readonly username: string;
}

/** What the bot's side and the people's side of the stand-in share. */
export interface Service {
  readonly state: State;
  readonly files: FileStore;
  readonly updates: UpdateQueue;
  readonly webhook: WebhookSender;
  readonly bot: BotUser;
  /** Marks file ids as this bot's. */
  readonly botTag: string;
  /** Whether webhooks on other computers may be called. */
  readonly allowRemote: boolean;
  /** The app's clock. */
  now(): Date;
  /** Notes that something a page or the data file shows has changed. */
  changed(): void;
}

/** The app's clock in Unix seconds, as the service writes dates. */
export function unixNow(service: Service): number {
  return Math.floor(service.now().getTime() / 1000);
}

export function findAccount(service: Service, id: number): Account | undefined {
  return service.state.accounts.find((account) => account.id === id);
}

export function findMessage(
  service: Service,
  chatId: number,
  messageId: number,
): StoredMessage | undefined {
  return service.state.messages.find((it) => it.chatId === chatId && it.messageId === messageId);
}

/** Stores a message and gives it the next id. Ids run through all of a bot's private chats. */
export function addMessage(
  service: Service,
  message: Omit<StoredMessage, 'messageId' | 'date' | 'edits'>,
): StoredMessage {
  const stored: StoredMessage = {
    ...message,
    messageId: service.state.nextMessageId++,
    date: unixNow(service),
    edits: 0,
  };
  service.state.messages.push(stored);
  service.changed();
  return stored;
}

export function removeMessage(service: Service, message: StoredMessage): void {
  service.state.messages = service.state.messages.filter((it) => it !== message);
  service.changed();
}
