import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { evening, marking } from '../schema/index.ts';
import type { HelperScope } from './get-evening.ts';
import { changeEvening } from './lock-evening.ts';

/**
 * "Stop for today": what is marked stays, what is open is neither missed nor silent, nothing more is sent, and nobody asks
 * why. A part that is half marked waits, in case the family goes on after all (`startEvening`); a correction that was begun is
 * dropped. Stopping twice, or once every part is marked, changes nothing.
 */
export async function stopEvening(store: Store, scope: HelperScope, now: Date): Promise<void> {
  await changeEvening(store, scope, now, async ({ db }, view) => {
    if (view.declined || view.results.every((result) => result !== null)) return;
    if (view.marking && view.results[view.marking.part]) {
      await db.delete(marking).where(eq(marking.eveningId, view.id));
    }
    if (view.stopped) return;
    await db.update(evening).set({ stoppedAt: now, remindAt: null }).where(eq(evening.id, view.id));
  });
}
