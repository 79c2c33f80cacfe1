import { and, eq, inArray } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { helper, ledger } from '../schema/index.ts';
import type { Copy } from './list-copies.ts';

/** Notes that a message about an evening is no longer in its chat: the person deleted it, so nobody tries to change it again. */
export async function forgetCopy(store: Store, eveningId: string, copy: Copy): Promise<void> {
  const owner = store.db
    .select({ id: helper.id })
    .from(helper)
    .where(eq(helper.chatId, copy.chatId));
  await store.db
    .update(ledger)
    .set({ messageId: null })
    .where(
      and(
        eq(ledger.eveningId, eveningId),
        eq(ledger.botId, copy.botId),
        eq(ledger.messageId, copy.messageId),
        inArray(ledger.recipientId, owner),
      ),
    );
}
