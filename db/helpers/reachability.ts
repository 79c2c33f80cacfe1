import { and, eq, notExists, type SQL, sql } from 'drizzle-orm';
import type { AnyPgColumn } from 'drizzle-orm/pg-core';
import type { Store } from '../connection/db.ts';
import { unreachable } from '../schema/index.ts';

/** A person's private chat with one of our bots. */
export interface BotChat {
  readonly botId: number;
  readonly chatId: number;
}

/** Notes that a bot cannot write to a chat (blocked, deleted, never opened); planners pass it over until it comes back. */
export async function markUnreachable(store: Store, chat: BotChat, now: Date): Promise<void> {
  const { botId, chatId } = chat;
  await store.db.insert(unreachable).values({ botId, chatId, since: now }).onConflictDoNothing();
}

/** Notes that a bot can write to a chat again. */
export async function markReachable(store: Store, { botId, chatId }: BotChat): Promise<void> {
  await store.db
    .delete(unreachable)
    .where(and(eq(unreachable.botId, botId), eq(unreachable.chatId, chatId)));
}

/** Inside a query: that the bot reaches the chat, as far as we know. */
export function isReached({ db }: Store, chatId: AnyPgColumn, botId: AnyPgColumn): SQL {
  return notExists(
    db
      .select({ one: sql`1` })
      .from(unreachable)
      .where(and(eq(unreachable.chatId, chatId), eq(unreachable.botId, botId))),
  );
}
