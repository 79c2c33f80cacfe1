import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { child, evening } from '../schema/index.ts';
import { refreshAllMemory } from './refresh-memory.ts';
import { refreshScores } from './refresh-scores.ts';

/**
 * Writes everything derived anew, child by child: first the scores from marks and run results, then the memory, which reads
 * off the scores which marks count. `onChild` hears how many of all children are done. Returns how many children.
 */
export async function rebuildAll(
  store: Store,
  onChild: (done: number, all: number) => void = () => {},
): Promise<number> {
  const children = await store.db.select({ id: child.id }).from(child);
  onChild(0, children.length);
  for (const [at, { id }] of children.entries()) {
    await inTransaction(store, async (inner) => {
      await lockEvenings(inner, id);
      await refreshScores(inner, id);
      await refreshAllMemory(inner, id);
    });
    onChild(at + 1, children.length);
  }
  return children.length;
}

/** Marks given meanwhile wait: read before them and written after them, the rebuilt rows would be out of date. */
async function lockEvenings(store: Store, childId: string): Promise<void> {
  await store.db
    .select({ id: evening.id })
    .from(evening)
    .where(eq(evening.childId, childId))
    .for('update');
}
