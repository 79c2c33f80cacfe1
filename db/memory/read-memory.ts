import { eq } from 'drizzle-orm';
import {
  type FactId,
  type FactMemory,
  MEMORY_MODEL,
  type MemoryModel,
  rebuildMemory,
} from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { factMemory } from '../schema/index.ts';
import { currentMarks } from './current-marks.ts';
import { readBase } from './memory-base.ts';
import { storedMemory } from './memory-row.ts';

/**
 * All that is known about a child's facts, for the composer. Where a row was written by another model, as after a release that
 * changed it, or cannot be read, the whole memory is folded anew from the marks, upon what deleted ones gave; the rows stay as they are until
 * `npm run rebuild` writes them all. Another model than the default is given only to compare them.
 */
export async function readMemory(
  store: Store,
  childId: string,
  model: MemoryModel = MEMORY_MODEL,
): Promise<Map<FactId, FactMemory>> {
  const rows = await store.db.select().from(factMemory).where(eq(factMemory.childId, childId));
  const memory = new Map<FactId, FactMemory>();
  for (const row of rows) {
    const stored = storedMemory(row, model.name);
    if (stored === null) {
      const base = await readBase(store, childId, model);
      return rebuildMemory(await currentMarks(store, childId), model, base);
    }
    memory.set(stored.fact, stored.known);
  }
  return memory;
}
