import { and, eq, inArray, lt, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inbox } from '../schema/index.ts';
import { MAX_TRIES } from './claim-updates.ts';

/**
 * Names one update of one bot, and the try that is being ended: when another process has taken the update meanwhile, because
 * this one was slow, its word no longer counts.
 */
export interface UpdateKey {
  readonly botId: number;
  readonly updateId: number;
  readonly tries: number;
}

/** Marks an update handled and forgets what it said. */
export async function finishUpdate(store: Store, key: UpdateKey, now: Date): Promise<void> {
  await store.db
    .update(inbox)
    .set({ status: 'done', payload: null, handledAt: now })
    .where(isUpdate(key));
}

/**
 * Puts an update whose handler or apology failed back in line, not to be taken before `notBefore`; after the last try it is set
 * aside.
 */
export async function retryUpdate(
  store: Store,
  key: UpdateKey,
  input: { notBefore: Date; now: Date },
): Promise<void> {
  await store.db
    .update(inbox)
    .set({
      status: sql`case when ${inbox.tries} >= ${MAX_TRIES} then 'failed' else 'pending' end`,
      notBefore: input.notBefore,
      handledAt: input.now,
    })
    .where(isUpdate(key));
}

/** Gives an update up: nothing is tried any more, its payload is kept for a look. */
export async function setAsideUpdate(store: Store, key: UpdateKey, now: Date): Promise<void> {
  await store.db.update(inbox).set({ status: 'failed', handledAt: now }).where(isUpdate(key));
}

/** Deletes updates that ended before `before`; the chat service never repeats them after a day. */
export async function purgeUpdates(store: Store, before: Date): Promise<number> {
  const rows = await store.db
    .delete(inbox)
    .where(and(inArray(inbox.status, ['done', 'failed']), lt(inbox.handledAt, before)))
    .returning({ updateId: inbox.updateId });
  return rows.length;
}

function isUpdate(key: UpdateKey) {
  return and(
    eq(inbox.botId, key.botId),
    eq(inbox.updateId, key.updateId),
    eq(inbox.tries, key.tries),
    eq(inbox.status, 'handling'),
  );
}
