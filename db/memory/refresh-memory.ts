import { and, eq, inArray } from 'drizzle-orm';
import { type FactId, type FactMemory, rebuildMemory } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { factMemory } from '../schema/index.ts';
import { currentMarks } from './current-marks.ts';

/**
 * Writes a child's memory of some facts anew from the marks that count. Also the way marks update memory, so that
 * "updated" and "rebuilt" can never drift apart.
 */
export async function refreshMemory(
  store: Store,
  childId: string,
  facts: readonly FactId[],
): Promise<void> {
  if (facts.length === 0) return;
  const rebuilt = rebuildMemory(await currentMarks(store, childId, facts));
  await store.db
    .delete(factMemory)
    .where(and(eq(factMemory.childId, childId), inArray(factMemory.fact, [...facts])));
  await insertMemory(store, childId, rebuilt);
}

/** Writes all of a child's memory anew from the marks that count. */
export async function refreshAllMemory(store: Store, childId: string): Promise<void> {
  const rebuilt = rebuildMemory(await currentMarks(store, childId));
  await store.db.delete(factMemory).where(eq(factMemory.childId, childId));
  await insertMemory(store, childId, rebuilt);
}

async function insertMemory(
  store: Store,
  childId: string,
  memory: ReadonlyMap<FactId, FactMemory>,
): Promise<void> {
  if (memory.size === 0) return;
  const rows = [...memory].map(([fact, known]) => ({ childId, fact, ...known }));
  await store.db.insert(factMemory).values(rows);
}
