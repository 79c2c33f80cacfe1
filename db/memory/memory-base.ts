import { and, eq, inArray } from 'drizzle-orm';
import type { FactId, FactMemory, MemoryModel } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { memoryBase } from '../schema/index.ts';
import { memoryRow, storedMemory } from './memory-row.ts';

/**
 * What a child's deleted marks gave, to fold the others upon; only of the facts named, when given. What another model wrote
 * cannot be carried over and is left out.
 */
export async function readBase(
  store: Store,
  childId: string,
  model: MemoryModel,
  facts?: readonly FactId[],
): Promise<Map<FactId, FactMemory>> {
  const own = eq(memoryBase.childId, childId);
  const rows = await store.db
    .select()
    .from(memoryBase)
    .where(facts ? and(own, inArray(memoryBase.fact, [...facts])) : own);
  return new Map(
    rows.flatMap((row) => {
      const stored = storedMemory(row, model.name);
      return stored ? [[stored.fact, stored.known] as const] : [];
    }),
  );
}

/** Rows to a statement: a statement holds 65,535 values at most. */
const ROWS_AT_ONCE = 1000;

/** Puts a child's base in place of the one it has. */
export async function writeBase(
  store: Store,
  childId: string,
  base: ReadonlyMap<FactId, FactMemory>,
  model: MemoryModel,
): Promise<void> {
  await store.db.delete(memoryBase).where(eq(memoryBase.childId, childId));
  const rows = [...base].map(([fact, known]) => memoryRow(childId, fact, known, model.name));
  for (let from = 0; from < rows.length; from += ROWS_AT_ONCE) {
    await store.db.insert(memoryBase).values(rows.slice(from, from + ROWS_AT_ONCE));
  }
}
