import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { evening } from '../schema/index.ts';
import type { HelperScope } from './get-evening.ts';
import { changeEvening } from './lock-evening.ts';

/** "Not today": nothing more comes this evening and nobody asks why. An evening with marks stays as it is. */
export async function declineEvening(store: Store, scope: HelperScope, now: Date): Promise<void> {
  await changeEvening(store, scope, now, async ({ db }, view) => {
    if (view.declined || view.results.some((result) => result !== null)) return;
    await db
      .update(evening)
      .set({ declinedAt: now, remindAt: null })
      .where(eq(evening.id, view.id));
  });
}
