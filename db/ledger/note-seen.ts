import { and, eq, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { helper, ledger } from '../schema/index.ts';

/**
 * A tap on a message proves that it arrived: an `unknown` row of this evening and chat becomes `sent` with that message id.
 */
export async function noteSeen(
  store: Store,
  input: { eveningId: string; botId: number; chatId: number; messageId: number; now: Date },
): Promise<void> {
  const owner = store.db
    .select({ id: helper.id })
    .from(helper)
    .where(eq(helper.chatId, input.chatId));
  const first = store.db
    .select({ id: ledger.id })
    .from(ledger)
    .where(
      and(
        eq(ledger.eveningId, input.eveningId),
        eq(ledger.botId, input.botId),
        eq(ledger.status, 'unknown'),
        sql`${ledger.recipientId} in ${owner}`,
        sql`not exists (select 1 from ${ledger} as known where known.evening_id = ${input.eveningId} and known.message_id = ${input.messageId} and known.bot_id = ${input.botId} and known.recipient_id = ${ledger.recipientId})`,
      ),
    )
    .orderBy(ledger.id)
    .limit(1);
  await store.db
    .update(ledger)
    .set({ status: 'sent', messageId: input.messageId, problem: null, settledAt: input.now })
    .where(sql`${ledger.id} in ${first}`);
}
