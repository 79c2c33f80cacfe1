import type { Fault } from '../faults.ts';
import { writeFileId } from '../file-ids.ts';
import type { Service } from '../service.ts';
import type { Account, Command, Entity, StoredMessage } from '../state.ts';

/** A person who holds a phone. `received` counts the bot's messages so far, deleted ones included. */
export interface AccountView {
  readonly id: number;
  readonly name: string;
  readonly note?: string;
  readonly opened: boolean;
  readonly blocked: boolean;
  readonly deactivated: boolean;
  readonly received: number;
}

/** A file in a message. Size in bytes, width and height in pixels, duration in seconds. */
export interface FileView {
  readonly fileId: string;
  readonly fileName?: string;
  readonly mimeType: string;
  readonly size: number;
  readonly width?: number;
  readonly height?: number;
  readonly duration?: number;
}

export interface ButtonView {
  readonly text: string;
  readonly data?: string;
  readonly url?: string;
}

/** A message as the phone shows it. `date` is ISO 8601 of the app's clock; `text` may be a caption. */
export interface ChatMessage {
  readonly id: number;
  readonly from: 'bot' | 'person';
  readonly date: string;
  readonly text: string;
  readonly entities: readonly Entity[];
  readonly photo?: FileView;
  readonly video?: FileView;
  readonly document?: FileView;
  readonly voice?: FileView;
  /** Id of the message it replies to. */
  readonly replyTo?: number;
  readonly buttons: readonly (readonly ButtonView[])[];
  readonly edits: number;
}

/** What the bot answered to a tap. An empty text only stops the button from waiting. */
export interface Answer {
  readonly queryId: string;
  readonly text: string;
  readonly showAlert: boolean;
  /** ISO 8601 of the app's clock. */
  readonly at: string;
}

/** What the page asks for every second. `now` is ISO 8601 of the app's clock. */
export interface Overview {
  /** Grows with every change, so the page knows when to read chats again. */
  readonly revision: number;
  readonly now: string;
  /** IANA name of the zone to tell the time in; absent: the browser's own. */
  readonly timeZone?: string;
  readonly bot: { readonly username: string; readonly name: string };
  readonly accounts: readonly AccountView[];
  /** What is still to go wrong on purpose. */
  readonly faults: readonly Fault[];
  /** Whether the service's rate limits are kept. */
  readonly limited: boolean;
}

export function toAccountView(account: Account): AccountView {
  const { id, name, note, opened, blocked, deactivated, received } = account;
  return {
    id,
    name,
    ...(note === undefined ? {} : { note }),
    opened,
    blocked,
    deactivated,
    received,
  };
}

const VIEWS = { Photo: 'photo', Document: 'document', Video: 'video', Voice: 'voice' } as const;

function toFileView(service: Service, uniqueId: string | undefined): Partial<ChatMessage> {
  const record = uniqueId === undefined ? undefined : service.files.find(uniqueId);
  if (record === undefined) return {};
  const { fileClass, fileName, mimeType, size, width, height, duration } = record;
  const view: FileView = {
    fileId: writeFileId({
      fileClass,
      uniqueId: record.uniqueId,
      variant: 'full',
      botTag: service.botTag,
    }),
    ...(fileName === undefined ? {} : { fileName }),
    mimeType,
    size,
    ...(width === undefined ? {} : { width }),
    ...(height === undefined ? {} : { height }),
    ...(duration === undefined ? {} : { duration }),
  };
  return { [VIEWS[fileClass]]: view };
}

function toButtonView(button: {
  text: string;
  callback_data?: string | undefined;
  url?: string | undefined;
}): ButtonView {
  const { text, callback_data: data, url } = button;
  return { text, ...(data === undefined ? {} : { data }), ...(url === undefined ? {} : { url }) };
}

export function toChatMessage(service: Service, message: StoredMessage): ChatMessage {
  return {
    id: message.messageId,
    from: message.from,
    date: new Date(message.date * 1000).toISOString(),
    text: message.content.text,
    entities: message.content.entities,
    ...toFileView(service, message.content.file),
    ...(message.replyTo === undefined ? {} : { replyTo: message.replyTo }),
    buttons: (message.keyboard ?? []).map((row) => row.map(toButtonView)),
    edits: message.edits,
  };
}

/** A phone's messages, oldest first. */
export function chatOf(service: Service, accountId: number): ChatMessage[] {
  return service.state.messages
    .filter((message) => message.chatId === accountId)
    .map((message) => toChatMessage(service, message));
}

/** Answers to a person's taps, oldest first. */
export function answersOf(service: Service, accountId: number): Answer[] {
  return service.state.queries.flatMap(({ id, accountId: owner, answer }) =>
    owner === accountId && answer !== undefined
      ? [
          {
            queryId: id,
            text: answer.text,
            showAlert: answer.showAlert,
            at: new Date(answer.at).toISOString(),
          },
        ]
      : [],
  );
}

/** The commands a person sees: the narrowest scope first, in the person's language before any. */
export function commandsOf(service: Service, account: Account): Command[] {
  const scopes = [`chat|${account.id}`, 'all_private_chats|', 'default|'];
  for (const scope of scopes) {
    for (const language of [account.languageCode, '']) {
      const commands = service.state.commands[`${scope}|${language}`];
      if (commands !== undefined) return commands;
    }
  }
  return [];
}
