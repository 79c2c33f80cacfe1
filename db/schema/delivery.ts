import { sql } from 'drizzle-orm';
import {
  bigint,
  boolean,
  check,
  date,
  index,
  integer,
  jsonb,
  pgTable,
  primaryKey,
  text,
  unique,
  uuid,
} from 'drizzle-orm/pg-core';
import { helper, instant, schoolClass } from './people.ts';
import { evening } from './practice.ts';

/** The kinds of message the engine sends by itself. Answers to taps are not in the ledger. */
export const LEDGER_KINDS = [
  'greeting',
  'evening',
  'reminder',
  'nudge',
  'digest',
  'digest_picture',
  'digest_table',
  'moved',
  'class_stopped',
  'class_resumed',
  'handed_over',
  'erasing',
  'kept_after_all',
  'fewer_evenings',
] as const;

/**
 * planned -> attempting -> sent | failed | unknown.
 * `attempting` is written before the call leaves; a time-out or a crash leaves `unknown`, which is never blindly resent.
 */
export const LEDGER_STATUSES = ['planned', 'attempting', 'sent', 'failed', 'unknown'] as const;

/** One message owed to one recipient. The unique key is what makes "exactly one" true. */
export const ledger = pgTable(
  'ledger',
  {
    id: uuid('id').primaryKey(),
    kind: text('kind', { enum: LEDGER_KINDS }).notNull(),
    subjectId: uuid('subject_id').notNull(),
    day: date('day', { mode: 'string' }).notNull(),
    classId: uuid('class_id')
      .notNull()
      .references(() => schoolClass.id),
    /** The bot that sends it, and in whose chat it lies then. */
    botId: bigint('bot_id', { mode: 'number' }).notNull(),
    eveningId: uuid('evening_id').references(() => evening.id),
    recipientKind: text('recipient_kind', { enum: ['helper', 'teacher'] }).notNull(),
    recipientId: uuid('recipient_id').notNull(),
    status: text('status', { enum: LEDGER_STATUSES }).notNull(),
    messageId: integer('message_id'),
    tries: integer('tries').notNull().default(0),
    notBefore: instant('not_before').notNull(),
    expiresAt: instant('expires_at').notNull(),
    enqueuedAt: instant('enqueued_at').notNull(),
    attemptedAt: instant('attempted_at'),
    settledAt: instant('settled_at'),
    problem: text('problem'),
  },
  (t) => [
    unique('ledger_once').on(t.subjectId, t.day, t.kind, t.recipientId),
    index('ledger_waiting').on(t.notBefore).where(sql`${t.status} = 'planned'`),
    index('ledger_attempting').on(t.attemptedAt).where(sql`${t.status} = 'attempting'`),
    index('ledger_by_evening').on(t.eveningId),
    index('ledger_by_recipient').on(t.recipientId, t.day),
    index('ledger_old').on(t.expiresAt),
    check(
      'ledger_status',
      sql`${t.status} in ('planned', 'attempting', 'sent', 'failed', 'unknown')`,
    ),
  ],
);

/** Updates as they arrived. Stored before they are acknowledged; the payload is purged once handled. */
export const inbox = pgTable(
  'inbox',
  {
    botId: bigint('bot_id', { mode: 'number' }).notNull(),
    updateId: bigint('update_id', { mode: 'number' }).notNull(),
    actorId: bigint('actor_id', { mode: 'number' }),
    payload: jsonb('payload').$type<unknown>(),
    status: text('status', { enum: ['pending', 'handling', 'done', 'failed'] }).notNull(),
    tries: integer('tries').notNull().default(0),
    /** Stands for updates that were left out because too many came at once; it has no payload. */
    shed: boolean('shed').notNull().default(false),
    receivedAt: instant('received_at').notNull(),
    /** Not handled before: a handler that failed is given time. */
    notBefore: instant('not_before').notNull(),
    claimedAt: instant('claimed_at'),
    handledAt: instant('handled_at'),
  },
  (t) => [
    primaryKey({ columns: [t.botId, t.updateId] }),
    index('inbox_open').on(t.updateId).where(sql`${t.status} in ('pending', 'handling')`),
    index('inbox_handled').on(t.handledAt),
    index('inbox_waiting')
      .on(t.botId, t.actorId)
      .where(sql`${t.status} in ('pending', 'handling')`),
    index('inbox_shed').on(t.botId, t.actorId, t.receivedAt).where(sql`${t.shed}`),
    check('inbox_status', sql`${t.status} in ('pending', 'handling', 'done', 'failed')`),
  ],
);

/** Content hash to the chat service's own file id, per bot, so that nothing is uploaded twice. */
export const media = pgTable(
  'media',
  {
    hash: text('hash').notNull(),
    botId: bigint('bot_id', { mode: 'number' }).notNull(),
    fileId: text('file_id').notNull(),
    uniqueId: text('unique_id').notNull(),
    bytes: integer('bytes').notNull(),
    createdAt: instant('created_at').notNull(),
  },
  (t) => [primaryKey({ columns: [t.hash, t.botId] }), index('media_old').on(t.createdAt)],
);

/** About how many bytes were sent to a helper in a month (`YYYY-MM`, in UTC), messages, pictures, clips and files together. */
export const dataUsed = pgTable(
  'data_used',
  {
    helperId: uuid('helper_id')
      .notNull()
      .references(() => helper.id),
    month: text('month').notNull(),
    bytes: bigint('bytes', { mode: 'number' }).notNull(),
  },
  (t) => [primaryKey({ columns: [t.helperId, t.month] }), index('data_used_old').on(t.month)],
);

/** A bot that works or has worked with this database, under the name by which links open it. */
export const bot = pgTable('bot', {
  id: bigint('id', { mode: 'number' }).primaryKey(),
  username: text('username').notNull(),
});

/** One row per bot: when the next message may leave, and until when everybody pauses. Shared by all senders. */
export const rate = pgTable('rate', {
  botId: bigint('bot_id', { mode: 'number' }).primaryKey(),
  nextAt: instant('next_at').notNull(),
  pausedUntil: instant('paused_until'),
});

/** When the next message to a chat may leave, by the clock of the sending rate. Deleted when it has long passed. */
export const chatRate = pgTable(
  'chat_rate',
  {
    botId: bigint('bot_id', { mode: 'number' }).notNull(),
    chatId: bigint('chat_id', { mode: 'number' }).notNull(),
    nextAt: instant('next_at').notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.chatId, t.botId] }),
    index('chat_rate_passed').on(t.botId, t.nextAt),
  ],
);

/** Chats that a bot cannot write to: the account is gone, has blocked this bot, or never opened a chat with it. */
export const unreachable = pgTable(
  'unreachable',
  {
    botId: bigint('bot_id', { mode: 'number' }).notNull(),
    chatId: bigint('chat_id', { mode: 'number' }).notNull(),
    since: instant('since').notNull(),
  },
  (t) => [primaryKey({ columns: [t.chatId, t.botId] })],
);

/** What the bot is waiting for a person to type. One row per chat; buttons need none. */
export const expectation = pgTable(
  'expectation',
  {
    chatId: bigint('chat_id', { mode: 'number' }).primaryKey(),
    kind: text('kind').notNull(),
    data: jsonb('data').$type<unknown>().notNull(),
    createdAt: instant('created_at').notNull(),
  },
  (t) => [index('expectation_old').on(t.createdAt)],
);

/** A code that opened nothing: which account tried, and when. Never the code. Kept for an hour, to slow down guessing. */
export const codeMiss = pgTable(
  'code_miss',
  {
    id: uuid('id').primaryKey(),
    chatId: bigint('chat_id', { mode: 'number' }).notNull(),
    at: instant('at').notNull(),
  },
  (t) => [index('code_miss_by_chat').on(t.chatId, t.at), index('code_miss_by_time').on(t.at)],
);

/** When a piece of upkeep last found nothing more to do; it rests for a day then. */
export const upkeep = pgTable('upkeep', {
  kind: text('kind').primaryKey(),
  doneAt: instant('done_at').notNull(),
});
