import { and, eq, isNotNull, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { helper, teacher } from '../schema/index.ts';

/** Notes that an account cannot be written to any more (blocked, deleted); planners pass it over until it comes back. */
export async function markUnreachable(store: Store, chatId: number, now: Date): Promise<void> {
  await store.db
    .update(helper)
    .set({ unreachableAt: now })
    .where(and(eq(helper.chatId, chatId), isNull(helper.unreachableAt)));
  await store.db
    .update(teacher)
    .set({ unreachableAt: now })
    .where(and(eq(teacher.chatId, chatId), isNull(teacher.unreachableAt)));
}

/** Notes that an account can be written to again. */
export async function markReachable(store: Store, chatId: number): Promise<void> {
  await store.db
    .update(helper)
    .set({ unreachableAt: null })
    .where(and(eq(helper.chatId, chatId), isNotNull(helper.unreachableAt)));
  await store.db
    .update(teacher)
    .set({ unreachableAt: null })
    .where(and(eq(teacher.chatId, chatId), isNotNull(teacher.unreachableAt)));
}
