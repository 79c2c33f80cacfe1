import { eq, inArray, or, sql } from 'drizzle-orm';
import { keepTopNumber } from '../children/class-places.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import {
  act,
  adjustment,
  book,
  child,
  consent,
  erasure,
  evening,
  expectation,
  factMemory,
  helperChild,
  inbox,
  ledger,
  mark,
  marking,
  memoryBase,
  pace,
  pageLog,
  pagePlace,
  partScore,
  runResult,
  slip,
} from '../schema/index.ts';
import { forgetHelpers } from './forget-helper.ts';

/**
 * Deletes every row about a child, at once and for good, and every helper who sits beside no other child. What stays is the
 * word that a child with this id was erased, and when: never a name. Returns false, and does nothing, when there is no such
 * child. No owner's scope: for the family's wish of a day ago, for a child that left, and for the operator.
 */
export async function eraseChild(
  store: Store,
  { childId, now }: { childId: string; now: Date },
): Promise<boolean> {
  return inTransaction(store, async (inner) => {
    const own = eq(child.id, childId);
    const [found] = await inner.db.select({ classId: child.classId }).from(child).where(own);
    if (!found) return false;
    await lockClass(inner, found.classId);
    const [row] = await inner.db.select().from(child).where(own).for('update');
    if (!row) return false;
    await keepTopNumber(inner, row.classId);
    await dropPractice(inner, childId);
    const helpers = await dropFamily(inner, childId);
    await dropTraces(inner, row);
    await inner.db.delete(book).where(eq(book.childId, childId));
    await inner.db.delete(child).where(eq(child.id, childId));
    await inner.db
      .insert(erasure)
      .values({ id: newId(now), subjectKind: 'child', subjectId: childId, erasedAt: now });
    await forgetHelpers(inner, helpers, now);
    return true;
  });
}

/** Evenings and all that hangs on them, memory, pages, and how often the drill came. */
async function dropPractice({ db }: Store, childId: string): Promise<void> {
  const evenings = db.select({ id: evening.id }).from(evening).where(eq(evening.childId, childId));
  await db.delete(marking).where(inArray(marking.eveningId, evenings));
  const ofChild = [mark, runResult, partScore, pageLog, pagePlace, factMemory, memoryBase, pace];
  for (const table of ofChild) {
    await db.delete(table).where(eq(table.childId, childId));
  }
  await db
    .delete(ledger)
    .where(or(eq(ledger.subjectId, childId), inArray(ledger.eveningId, evenings)));
  await db.delete(evening).where(eq(evening.childId, childId));
}

/** Slips, agreements and ties. Returns who sat beside the child. */
async function dropFamily({ db }: Store, childId: string): Promise<string[]> {
  await db.delete(slip).where(eq(slip.childId, childId));
  await db.delete(consent).where(eq(consent.childId, childId));
  await db.delete(adjustment).where(eq(adjustment.childId, childId));
  const ties = await db
    .delete(helperChild)
    .where(eq(helperChild.childId, childId))
    .returning({ id: helperChild.helperId });
  return ties.map(({ id }) => id);
}

/** Where the child may be named in passing: acts to undo, lists waiting for a yes, updates that were set aside. */
async function dropTraces({ db }: Store, row: typeof child.$inferSelect): Promise<void> {
  const nickname = row.nickname.toLowerCase();
  await db.delete(act).where(sql`strpos(${act.before}::text, ${row.id}::text) > 0`);
  await db
    .delete(expectation)
    .where(
      sql`strpos(lower(${expectation.data}::text), ${nickname}) > 0 or strpos(${expectation.data}::text, ${row.id}::text) > 0`,
    );
  await db
    .update(inbox)
    .set({ payload: null })
    .where(
      sql`${inbox.status} = 'failed' and strpos(lower(${inbox.payload}::text), ${nickname}) > 0`,
    );
}
