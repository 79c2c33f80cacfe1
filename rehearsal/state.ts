/** A person who can hold a phone. The chat with the bot has the same id as the account. */
export interface Account {
  readonly id: number;
  name: string;
  note?: string;
  languageCode: string;
  /** True once the person has pressed start. */
  opened: boolean;
  blocked: boolean;
  deactivated: boolean;
  /** Messages received from the bot so far; the page counts unread ones from it. */
  received: number;
}

/** Formatting of a stretch of text. Offset and length are UTF-16 code units. */
export interface Entity {
  type: string;
  offset: number;
  length: number;
  url?: string | undefined;
  language?: string | undefined;
}

export interface Button {
  text: string;
  callback_data?: string | undefined;
  url?: string | undefined;
}

/** A file's class decides which methods may send it again. */
export type FileClass = 'Photo' | 'Document' | 'Video' | 'Voice';

/** What is known of an uploaded file. Sizes in bytes, width and height in pixels, duration in seconds. */
export interface FileRecord {
  uniqueId: string;
  fileClass: FileClass;
  /** Path below the download address, for example `documents/file_2.csv`. */
  path: string;
  fileName?: string;
  mimeType: string;
  size: number;
  width?: number;
  height?: number;
  duration?: number;
}

/** What a message says. `text` is the caption when there is a file. */
export interface Content {
  text: string;
  entities: Entity[];
  /** Unique id of the file shown. */
  file?: string;
}

/** Dates are Unix seconds of the app's clock. */
export interface StoredMessage {
  readonly chatId: number;
  readonly messageId: number;
  readonly from: 'bot' | 'person';
  readonly date: number;
  editDate?: number;
  edits: number;
  content: Content;
  /** Id of the message it replies to. */
  replyTo?: number;
  keyboard?: Button[][];
  /** A reply keyboard, its removal or a forced reply, kept as sent. */
  otherMarkup?: Record<string, unknown>;
}

/** Where updates are sent to. Instants are milliseconds of the app's clock. */
export interface WebhookSetting {
  readonly url: string;
  readonly secretToken?: string;
  readonly maxConnections: number;
  readonly hasCertificate: boolean;
  lastError?: { at: number; message: string };
  /** Since when it answers that it is gone for good. */
  goneSince?: number;
}

/** An update waiting for the bot. `expiresAt` is milliseconds of the app's clock. */
export interface PendingUpdate {
  readonly update: { readonly update_id: number } & Record<string, unknown>;
  readonly expiresAt: number;
}

/** A tap and, once given, its answer. `at` is milliseconds of the app's clock. */
export interface Query {
  readonly id: string;
  readonly accountId: number;
  readonly messageId: number;
  readonly data: string;
  readonly at: number;
  answer?: { text: string; showAlert: boolean; at: number };
}

export interface Command {
  command: string;
  description: string;
}

/** Everything that outlives a restart. */
export interface State {
  nextMessageId: number;
  nextUpdateId: number;
  nextQueryNumber: number;
  nextFileNumber: number;
  accounts: Account[];
  messages: StoredMessage[];
  pending: PendingUpdate[];
  queries: Query[];
  files: FileRecord[];
  /** Command lists by scope and language. */
  commands: Record<string, Command[]>;
  allowedUpdates?: string[];
  webhook?: WebhookSetting;
}

/** Update ids begin at the tenths of a second since this day, so a lost data file never repeats one. */
const UPDATE_EPOCH = Date.UTC(2026, 0, 1);

/** The first update id for a start at `machineMs`; stays below 2^31 until October 2032. */
export function firstUpdateId(machineMs: number): number {
  return Math.max(1, Math.floor((machineMs - UPDATE_EPOCH) / 100));
}

/** A state with no people in it. */
export function emptyState(): State {
  return {
    nextMessageId: 1,
    nextUpdateId: 1,
    nextQueryNumber: 1,
    nextFileNumber: 1,
    accounts: [],
    messages: [],
    pending: [],
    queries: [],
    files: [],
    commands: {},
  };
}
