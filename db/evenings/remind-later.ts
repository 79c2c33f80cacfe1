import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { evening } from '../schema/index.ts';
import type { HelperScope } from './get-evening.ts';
import { changeEvening } from './lock-evening.ts';

/** Notes that the family wants one reminder, at `at`. Asked again, the first wish stands. */
export async function remindLater(
  store: Store,
  scope: HelperScope,
  input: { at: Date; now: Date },
): Promise<void> {
  await changeEvening(store, scope, input.now, async ({ db }, view) => {
    if (view.remindAt || view.started || view.declined) return;
    await db.update(evening).set({ remindAt: input.at }).where(eq(evening.id, view.id));
  });
}
