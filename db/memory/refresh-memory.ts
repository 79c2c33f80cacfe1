import { and, eq, inArray } from 'drizzle-orm';
import {
  type FactId,
  type FactMemory,
  MEMORY_MODEL,
  type MemoryModel,
  rebuildMemory,
  relativesOf,
} from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { factMemory } from '../schema/index.ts';
import { currentMarks } from './current-marks.ts';
import { readBase } from './memory-base.ts';
import { memoryRow } from './memory-row.ts';

/**
 * Writes a child's memory of some facts, and of all they lend to, anew from the marks that count. Also the way marks update
 * memory, so that "updated" and "rebuilt" can never drift apart: a fact's memory follows from its own marks and those of its
 * relatives, so these are all read. Another model than the default is given only to compare them.
 */
export async function refreshMemory(
  store: Store,
  childId: string,
  facts: readonly FactId[],
  model: MemoryModel = MEMORY_MODEL,
): Promise<void> {
  if (facts.length === 0) return;
  const touched = withRelatives(facts);
  const read = [...withRelatives([...touched])];
  const marks = await currentMarks(store, childId, read);
  const base = await readBase(store, childId, model, read);
  const rebuilt = [...rebuildMemory(marks, model, base)].filter(([fact]) => touched.has(fact));
  await store.db
    .delete(factMemory)
    .where(and(eq(factMemory.childId, childId), inArray(factMemory.fact, [...touched])));
  await insertMemory(store, childId, rebuilt, model);
}

/** Writes all of a child's memory anew from the marks that count. */
export async function refreshAllMemory(
  store: Store,
  childId: string,
  model: MemoryModel = MEMORY_MODEL,
): Promise<void> {
  const base = await readBase(store, childId, model);
  const rebuilt = rebuildMemory(await currentMarks(store, childId), model, base);
  await store.db.delete(factMemory).where(eq(factMemory.childId, childId));
  await insertMemory(store, childId, [...rebuilt], model);
}

/** Lending goes both ways, so those a fact lends to are also those that lend to it. */
function withRelatives(facts: readonly FactId[]): ReadonlySet<FactId> {
  return new Set(facts.flatMap((fact) => [fact, ...relativesOf(fact).map((each) => each.fact)]));
}

/** Rows to a statement: a statement holds 65,535 values at most. */
const ROWS_AT_ONCE = 1000;

async function insertMemory(
  store: Store,
  childId: string,
  memory: readonly (readonly [FactId, FactMemory])[],
  model: MemoryModel,
): Promise<void> {
  for (let from = 0; from < memory.length; from += ROWS_AT_ONCE) {
    const rows = memory
      .slice(from, from + ROWS_AT_ONCE)
      .map(([fact, known]) => memoryRow(childId, fact, known, model.name));
    await store.db.insert(factMemory).values(rows);
  }
}
