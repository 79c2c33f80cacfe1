import { and, desc, eq, inArray, isNotNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { helper, ledger } from '../schema/index.ts';
import type { Copy } from './list-copies.ts';

/**
 * Notes that an evening goes on in another message of a chat, which is kept true from now on in place of the latest one that
 * was sent there. Nothing happens when none was.
 */
export async function moveCopy(store: Store, eveningId: string, to: Copy): Promise<void> {
  const owner = store.db.select({ id: helper.id }).from(helper).where(eq(helper.chatId, to.chatId));
  const latest = store.db
    .select({ id: ledger.id })
    .from(ledger)
    .where(
      and(
        eq(ledger.eveningId, eveningId),
        eq(ledger.botId, to.botId),
        eq(ledger.status, 'sent'),
        isNotNull(ledger.messageId),
        inArray(ledger.recipientId, owner),
      ),
    )
    .orderBy(desc(ledger.id))
    .limit(1);
  await store.db.update(ledger).set({ messageId: to.messageId }).where(inArray(ledger.id, latest));
}
