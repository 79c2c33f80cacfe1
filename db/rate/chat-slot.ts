import { and, eq, inArray, lt, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import type { BotChat } from '../helpers/reachability.ts';
import { chatRate } from '../schema/index.ts';
import type { Haste } from './send-slot.ts';

/** One message a second in a chat is the service's advice; it tolerates short bursts. */
export const SENDS_A_SECOND_IN_CHAT = 1;
/** A family with three children gets three drills at once. */
const BURST: Readonly<Record<Haste, number>> = { bulk: 2, answer: 3 };

/**
 * Books the next place in a chat and returns how many milliseconds to wait for it. Here a place is booked ahead: what waits
 * behind it is for the same eyes.
 */
export async function bookChatSlot(
  store: Store,
  chat: BotChat,
  { haste, at, perSecond }: { haste: Haste; at: Date; perSecond: number },
): Promise<number> {
  const stepMs = 1_000 / perSecond;
  const step = sql`interval '1 millisecond' * ${stepMs}`;
  const [row] = await store.db
    .insert(chatRate)
    .values({ ...chat, nextAt: new Date(at.getTime() + stepMs) })
    .onConflictDoUpdate({
      target: [chatRate.chatId, chatRate.botId],
      set: {
        nextAt: sql`greatest(${chatRate.nextAt}, ${at.toISOString()}::timestamptz) + ${step}`,
      },
    })
    .returning({ nextAt: chatRate.nextAt });
  if (!row) return 0;
  const start = row.nextAt.getTime() - stepMs - stepMs * BURST[haste];
  return Math.max(0, start - at.getTime());
}

/** Deletes what is known of chats whose last message has long been paid for. Returns how many. */
export async function forgetChatSlots(
  store: Store,
  { botId, before, limit }: { botId: number; before: Date; limit: number },
): Promise<number> {
  const passed = store.db
    .select({ chatId: chatRate.chatId })
    .from(chatRate)
    .where(and(eq(chatRate.botId, botId), lt(chatRate.nextAt, before)))
    .limit(limit);
  const rows = await store.db
    .delete(chatRate)
    .where(
      and(eq(chatRate.botId, botId), inArray(chatRate.chatId, passed), lt(chatRate.nextAt, before)),
    )
    .returning({ chatId: chatRate.chatId });
  return rows.length;
}
