import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { evening } from '../schema/index.ts';
import type { HelperScope } from './get-evening.ts';
import { changeEvening } from './lock-evening.ts';

/** Starts an evening, also one that was put off with "Not today" or stopped for the day. Starting twice changes nothing. */
export async function startEvening(store: Store, scope: HelperScope, now: Date): Promise<void> {
  await changeEvening(store, scope, now, async ({ db }, view) => {
    if (view.started && !view.declined && !view.stopped) return;
    await db
      .update(evening)
      .set({ startedAt: now, declinedAt: null, stoppedAt: null })
      .where(eq(evening.id, view.id));
  });
}
