import { and, asc, eq, gte, inArray, lt, or, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inbox } from '../schema/index.ts';

/** How often an update that kills its handler is tried before it is set aside. */
export const MAX_TRIES = 3;

/** An update taken for handling. */
export interface ClaimedUpdate {
  readonly updateId: number;
  readonly actorId: number | null;
  readonly payload: unknown;
  /** How often it has been tried, this time included. */
  readonly tries: number;
}

/**
 * Takes waiting updates in the order they came, and those whose handler began before `abandonedBefore` and never ended.
 * Two processes never take the same one. One whose last try never ended is set aside as `failed`.
 */
export async function claimUpdates(
  store: Store,
  input: { botId: number; abandonedBefore: Date; limit: number; now: Date },
): Promise<ClaimedUpdate[]> {
  const abandoned = and(eq(inbox.status, 'handling'), lt(inbox.claimedAt, input.abandonedBefore));
  await store.db
    .update(inbox)
    .set({ status: 'failed', handledAt: input.now })
    .where(and(eq(inbox.botId, input.botId), gte(inbox.tries, MAX_TRIES), abandoned));
  const open = store.db
    .select({ updateId: inbox.updateId })
    .from(inbox)
    .where(
      and(
        eq(inbox.botId, input.botId),
        lt(inbox.tries, MAX_TRIES),
        or(eq(inbox.status, 'pending'), abandoned),
      ),
    )
    .orderBy(asc(inbox.updateId))
    .limit(input.limit)
    .for('update', { skipLocked: true });
  const rows = await store.db
    .update(inbox)
    .set({ status: 'handling', claimedAt: input.now, tries: sql`${inbox.tries} + 1` })
    .where(and(eq(inbox.botId, input.botId), inArray(inbox.updateId, open)))
    .returning({
      updateId: inbox.updateId,
      actorId: inbox.actorId,
      payload: inbox.payload,
      tries: inbox.tries,
    });
  return rows.sort((a, b) => a.updateId - b.updateId);
}
