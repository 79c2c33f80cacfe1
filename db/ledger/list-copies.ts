import { and, asc, eq, isNotNull, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { helper, helperChild, ledger } from '../schema/index.ts';

/** A message about an evening that lies in some helper's chat with a bot. */
export interface Copy {
  readonly botId: number;
  readonly chatId: number;
  readonly messageId: number;
}

/**
 * Every message of an evening that surely arrived, oldest first, so that all of them can be kept true. The chat of a helper
 * who has left is none of them: nothing about the child goes there any more.
 */
export async function listCopies(store: Store, eveningId: string): Promise<Copy[]> {
  const rows = await store.db
    .select({ botId: ledger.botId, chatId: helper.chatId, messageId: ledger.messageId })
    .from(ledger)
    .innerJoin(helper, eq(helper.id, ledger.recipientId))
    .innerJoin(
      helperChild,
      and(eq(helperChild.helperId, helper.id), eq(helperChild.childId, ledger.subjectId)),
    )
    .where(
      and(eq(ledger.eveningId, eveningId), isNotNull(ledger.messageId), isNull(helperChild.leftAt)),
    )
    .orderBy(asc(ledger.id));
  return rows.flatMap(({ messageId, ...chat }) =>
    messageId === null ? [] : [{ ...chat, messageId }],
  );
}
