import { and, eq, gt, min } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inbox } from '../schema/index.ts';

/** When the next update that waits for another try is due, of those due after an instant; null when none waits. */
export async function nextTryAt(
  store: Store,
  input: { botId: number; after: Date },
): Promise<Date | null> {
  const [row] = await store.db
    .select({ at: min(inbox.notBefore) })
    .from(inbox)
    .where(
      and(
        eq(inbox.botId, input.botId),
        eq(inbox.status, 'pending'),
        gt(inbox.notBefore, input.after),
      ),
    );
  return row?.at ?? null;
}
