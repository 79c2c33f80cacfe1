import { and, eq, isNull, ne } from 'drizzle-orm';
import { UNDO_MS } from '../acts/list-acts.ts';
import { checkPlace } from '../children/class-places.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { callBack, callOff } from '../ledger/call-off.ts';
import { child, helperChild, ledger, schoolClass } from '../schema/index.ts';
import { oweErasing } from './owe-erasing.ts';

/** What the ledger says of a message that was called off because its child is being erased. */
const CALLED_OFF = 'erasing';

/** A family's wish about one of its own children. */
export interface ErasureWish {
  readonly helperId: string;
  readonly childId: string;
  readonly now: Date;
}

/**
 * Notes the family's wish that a child be erased. From this moment on nothing is sent about it and no screen shows it; a day
 * later its rows are deleted. Its other helpers and its teachers are told. Any helper who agreed for the child may; a child
 * that is not one's own is `not_found`. Returns the nickname, and whether it had been wished before, which changes nothing.
 */
export async function askErasure(
  store: Store,
  wish: ErasureWish,
): Promise<{ nickname: string; again: boolean }> {
  return inTransaction(store, async (inner) => {
    const row = await lockOwn(inner, wish);
    const { nickname } = row;
    if (row.erasingSince) return { nickname, again: true };
    const { childId, helperId, now } = wish;
    await inner.db
      .update(child)
      .set({ archivedAt: row.archivedAt ?? now, erasingSince: now, erasingBy: helperId })
      .where(eq(child.id, childId));
    await callOff(inner, { which: [eq(ledger.subjectId, childId)], because: CALLED_OFF, now });
    await oweErasing(inner, 'erasing', { row, zone: await zoneOf(inner, row.classId), ...wish });
    return { nickname, again: false };
  });
}

/**
 * Takes the wish back within a day; only the helper whose wish it was may (`not_found` for others, `expired` later). What was
 * called off and is not too late goes out after all. When the class has filled up or another child has the nickname by now:
 * `conflict`. Returns the nickname, and whether nothing was being erased.
 */
export async function undoErasure(
  store: Store,
  wish: ErasureWish,
): Promise<{ nickname: string; again: boolean }> {
  return inTransaction(store, async (inner) => {
    const { helperId, childId, now } = wish;
    const row = await lockOwn(inner, wish);
    const { nickname, erasingSince } = row;
    if (!erasingSince) return { nickname, again: true };
    if (row.erasingBy !== helperId) throw new AppError('not_found', 'erasure');
    if (erasingSince.getTime() + UNDO_MS <= now.getTime()) throw new AppError('expired', 'erasure');
    const wasArchived = row.archivedAt?.getTime() !== erasingSince.getTime();
    if (!wasArchived) await takePlace(inner, row);
    await inner.db
      .update(child)
      .set({
        erasingSince: null,
        erasingBy: null,
        archivedAt: wasArchived ? row.archivedAt : null,
      })
      .where(eq(child.id, childId));
    if (!wasArchived) await wake(inner, childId, now);
    await oweErasing(inner, 'kept_after_all', {
      row,
      zone: await zoneOf(inner, row.classId),
      ...wish,
    });
    return { nickname, again: false };
  });
}

/** The list is locked before the child, as everywhere else, so that two changes to a class never wait for each other. */
async function lockOwn(inner: Store, { helperId, childId }: ErasureWish) {
  const [own] = await inner.db
    .select({ classId: child.classId })
    .from(child)
    .innerJoin(helperChild, eq(helperChild.childId, child.id))
    .where(
      and(eq(child.id, childId), eq(helperChild.helperId, helperId), isNull(helperChild.leftAt)),
    );
  if (!own) throw new AppError('not_found', 'child');
  await lockClass(inner, own.classId);
  const [row] = await inner.db.select().from(child).where(eq(child.id, childId)).for('update');
  if (!row) throw new AppError('not_found', 'child');
  return row;
}

async function takePlace(inner: Store, row: typeof child.$inferSelect): Promise<void> {
  try {
    await checkPlace(inner, row.classId, { childId: row.id, nickname: row.nickname });
  } catch (error) {
    if (error instanceof AppError) throw new AppError('conflict', 'erasure');
    throw error;
  }
}

async function wake(inner: Store, childId: string, now: Date): Promise<void> {
  const which = [eq(ledger.subjectId, childId), ne(ledger.kind, 'erasing')] as const;
  await callBack(inner, { which, because: CALLED_OFF, now });
}

async function zoneOf(inner: Store, classId: string): Promise<string> {
  const [row] = await inner.db
    .select({ zone: schoolClass.zone })
    .from(schoolClass)
    .where(eq(schoolClass.id, classId));
  return row?.zone ?? 'UTC';
}
