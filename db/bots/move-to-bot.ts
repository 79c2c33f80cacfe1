import { and, eq } from 'drizzle-orm';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { priorityOf } from '../ledger/priority.ts';
import { bot, ledger, schoolClass } from '../schema/index.ts';
import type { KnownBot } from './know-bot.ts';

/**
 * Gives a class to another bot: from now on that one writes to its families and teachers, also what waits already. Messages in
 * the chats of the old bot stay its own, and their buttons go on working as long as it runs.
 *
 * Returns the bot, and how many waiting messages go with the class. An unknown class or bot is `not_found`.
 */
export async function moveToBot(
  store: Store,
  { classId, botId }: { classId: string; botId: number },
): Promise<KnownBot & { readonly waiting: number }> {
  return inTransaction(store, async (inner) => {
    const [known] = await inner.db.select().from(bot).where(eq(bot.id, botId));
    if (!known) throw new AppError('not_found', 'bot');
    await lockClass(inner, classId);
    const moved = await inner.db
      .update(schoolClass)
      .set({ botId })
      .where(eq(schoolClass.id, classId))
      .returning({ id: schoolClass.id });
    if (moved.length === 0) throw new AppError('not_found', 'class');
    const rows = await inner.db
      .update(ledger)
      .set({ botId })
      .where(and(eq(ledger.classId, classId), eq(ledger.status, 'planned')))
      .returning({ ledgerId: ledger.id, kind: ledger.kind });
    await inner.queue.enqueue(
      inner.db,
      rows.map(({ ledgerId, kind }) => ({ ledgerId, botId, priority: priorityOf(kind) })),
    );
    return { botId, username: known.username, waiting: rows.length };
  });
}
