import { and, eq, inArray } from 'drizzle-orm';
import { type FactId, type FactMemory, rebuildMemory } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { child, factMemory } from '../schema/index.ts';
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

/** Rebuilds the memory of every child from marks. Returns how many children. */
export async function rebuildAllMemory(store: Store): Promise<number> {
  const children = await store.db.select({ id: child.id }).from(child);
  for (const { id } of children) {
    await inTransaction(store, async (inner) => {
      const rebuilt = rebuildMemory(await currentMarks(inner, id));
      await inner.db.delete(factMemory).where(eq(factMemory.childId, id));
      await insertMemory(inner, id, rebuilt);
    });
  }
  return children.length;
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
