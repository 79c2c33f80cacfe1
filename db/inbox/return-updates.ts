import { and, eq, inArray, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inbox } from '../schema/index.ts';

/** Puts updates that were taken but not begun back in line, as if they had never been taken: no try is counted. */
export async function returnUpdates(
  store: Store,
  input: { botId: number; updateIds: readonly number[] },
): Promise<void> {
  if (input.updateIds.length === 0) return;
  await store.db
    .update(inbox)
    .set({ status: 'pending', tries: sql`greatest(${inbox.tries} - 1, 0)` })
    .where(
      and(
        eq(inbox.botId, input.botId),
        inArray(inbox.updateId, [...input.updateIds]),
        eq(inbox.status, 'handling'),
      ),
    );
}

/**
 * Puts everything a bot was handling when its process died back in line at once; returns how many. The try stays counted: an
 * update may be what killed the process.
 *
 * For a process that has just made sure that no other one is handling anything (`Peers.join`). What is taken afterwards is
 * covered by `abandonedBefore` of `claimUpdates`.
 */
export async function returnAbandoned(store: Store, botId: number): Promise<number> {
  const rows = await store.db
    .update(inbox)
    .set({ status: 'pending' })
    .where(and(eq(inbox.botId, botId), eq(inbox.status, 'handling')))
    .returning({ updateId: inbox.updateId });
  return rows.length;
}
