import { eq } from 'drizzle-orm';
import { localTimeAt } from '../calendar/zone.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { evening, helperChild } from '../schema/index.ts';
import type { EveningView } from './evening-view.ts';
import { getEvening, type HelperScope } from './get-evening.ts';
import { isOwn } from './own-evening.ts';

/**
 * Runs a change on an evening that is still open, one change at a time: two helpers tapping together wait for each other.
 *
 * An evening is open until its own day ends in the class's time zone; then the change is refused as `expired`. Another
 * family's evening is `not_found`.
 */
export async function changeEvening(
  store: Store,
  scope: HelperScope,
  now: Date,
  change: (inner: Store, view: EveningView) => Promise<void>,
): Promise<void> {
  await inTransaction(store, async (inner) => {
    await lock(inner, scope);
    const view = await getEvening(inner, scope);
    if (localTimeAt(now, view.zone).day !== view.day) throw new AppError('expired', 'evening');
    await change(inner, view);
  });
}

async function lock(store: Store, scope: HelperScope): Promise<void> {
  await store.db
    .select({ id: evening.id })
    .from(evening)
    .innerJoin(helperChild, eq(helperChild.childId, evening.childId))
    .where(isOwn(scope))
    .for('update', { of: evening });
}
