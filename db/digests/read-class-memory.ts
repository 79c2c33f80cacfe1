import { and, eq, getTableColumns, gt, isNull } from 'drizzle-orm';
import { type FactId, type FactMemory, MEMORY_MODEL, rebuildMemory } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { currentMarks } from '../memory/current-marks.ts';
import { storedMemory } from '../memory/memory-row.ts';
import { child, factMemory } from '../schema/index.ts';

/**
 * What the children of a class remember of the facts they were asked themselves, by child, in one query. A child with a row
 * that another model wrote, as after a release that changed it, or with a row of no known fact is folded anew from its marks,
 * in queries of its own: one child's faulty row costs the class no digest.
 */
export async function readClassMemory(
  store: Store,
  classId: string,
): Promise<Map<string, ReadonlyMap<FactId, FactMemory>>> {
  const rows = await store.db
    .select(getTableColumns(factMemory))
    .from(factMemory)
    .innerJoin(child, eq(child.id, factMemory.childId))
    .where(and(eq(child.classId, classId), isNull(child.archivedAt), gt(factMemory.asked, 0)));
  const read = new Map<string, Map<FactId, FactMemory>>();
  const stale = new Set<string>();
  for (const row of rows) {
    const memory = read.get(row.childId) ?? new Map<FactId, FactMemory>();
    read.set(row.childId, memory);
    const stored = storedMemory(row, MEMORY_MODEL.name);
    if (stored === null) stale.add(row.childId);
    else memory.set(stored.fact, stored.known);
  }
  for (const childId of stale) {
    read.set(childId, rebuildMemory(await currentMarks(store, childId)));
  }
  return read;
}
