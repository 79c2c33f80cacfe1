import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { claimStore } from '../rate/claim-store.ts';
import { bot, schoolClass } from '../schema/index.ts';

/** A bot of ours and the name by which links open it. */
export interface KnownBot {
  readonly botId: number;
  readonly username: string;
}

/**
 * Notes who a bot is, and makes the line and the queue that its senders share. Before it does anything else; not inside a
 * transaction. Refuses like {@link claimStore}.
 */
export async function knowBot(store: Store, { botId, username }: KnownBot): Promise<void> {
  await claimStore(store, botId);
  await store.queue.open(botId);
  await store.db
    .insert(bot)
    .values({ id: botId, username })
    .onConflictDoUpdate({ target: bot.id, set: { username } });
}

/** The bot that a class belongs to. `not_found` when there is no such class, or its bot has never run here. */
export async function readClassBot(store: Store, classId: string): Promise<KnownBot> {
  const [row] = await store.db
    .select({ botId: bot.id, username: bot.username })
    .from(schoolClass)
    .innerJoin(bot, eq(bot.id, schoolClass.botId))
    .where(eq(schoolClass.id, classId));
  if (!row) throw new AppError('not_found', 'bot');
  return row;
}
