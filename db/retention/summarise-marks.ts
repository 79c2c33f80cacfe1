import { and, eq, inArray, isNull, lt } from 'drizzle-orm';
import { addDays, MEMORY_MODEL, rebuildMemory } from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { currentMarks } from '../memory/current-marks.ts';
import { readBase, writeBase } from '../memory/memory-base.ts';
import { evening, mark, marking, runResult } from '../schema/index.ts';
import { MARKS_DAYS } from './keep-for.ts';

/**
 * Deletes the marks and run results of evenings that are older than {@link MARKS_DAYS}, of at most `limit` children. The scores
 * of the parts stay, so that a best stays a best, and what the marks said of each fact is folded into the child's memory base,
 * so that memory is the same after as before and `npm run rebuild` keeps it. Returns how many children.
 */
export async function summariseMarks(
  store: Store,
  { now, limit }: { now: Date; limit: number },
): Promise<number> {
  const before = addDays(localTimeAt(now, 'UTC').day, -MARKS_DAYS);
  const old = and(lt(evening.day, before), isNull(evening.summarisedAt));
  const children = await store.db
    .selectDistinct({ id: evening.childId })
    .from(evening)
    .where(old)
    .orderBy(evening.childId)
    .limit(limit);
  for (const { id } of children) {
    await inTransaction(store, async (inner) => {
      // Locked, so that two processes do not fold the same marks twice.
      const rows = await inner.db
        .select({ id: evening.id })
        .from(evening)
        .where(and(eq(evening.childId, id), old))
        .orderBy(evening.id)
        .for('update');
      if (rows.length === 0) return;
      const base = await readBase(inner, id, MEMORY_MODEL);
      const marks = (await currentMarks(inner, id)).filter(({ day }) => day < before);
      await writeBase(inner, id, rebuildMemory(marks, MEMORY_MODEL, base), MEMORY_MODEL);
      await dropMarks(
        inner,
        rows.map((row) => row.id),
        now,
      );
    });
  }
  return children.length;
}

async function dropMarks({ db }: Store, evenings: readonly string[], now: Date): Promise<void> {
  const ids = [...evenings];
  await db.delete(marking).where(inArray(marking.eveningId, ids));
  await db.delete(mark).where(inArray(mark.eveningId, ids));
  await db.delete(runResult).where(inArray(runResult.eveningId, ids));
  await db.update(evening).set({ summarisedAt: now }).where(inArray(evening.id, ids));
}
