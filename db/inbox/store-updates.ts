import type { Store } from '../connection/db.ts';
import { inbox } from '../schema/index.ts';
import { storableJson } from './storable-json.ts';

/** An update as it came in. `actorId` is the person, so that one person's updates are handled in order. */
export interface IncomingUpdate {
  readonly updateId: number;
  readonly actorId: number | null;
  readonly payload: unknown;
}

/** Stores updates before they are acknowledged. One that was stored before is left as it is. Returns how many are new. */
export async function storeUpdates(
  store: Store,
  input: { botId: number; updates: readonly IncomingUpdate[]; now: Date },
): Promise<number> {
  if (input.updates.length === 0) return 0;
  const rows = await store.db
    .insert(inbox)
    .values(
      input.updates.map((update) => ({
        ...update,
        payload: storableJson(update.payload),
        botId: input.botId,
        status: 'pending' as const,
        receivedAt: input.now,
        notBefore: input.now,
      })),
    )
    .onConflictDoNothing()
    .returning({ updateId: inbox.updateId });
  return rows.length;
}
