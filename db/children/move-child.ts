import { and, eq } from 'drizzle-orm';
import { keepAct } from '../acts/keep-act.ts';
import type { Inverse } from '../acts/undo-act.ts';
import { localTimeAt } from '../calendar/zone.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { oweMoved } from '../ledger/owe-moved.ts';
import { changePace } from '../pace/change-pace.ts';
import { book, child, classTeacher, schoolClass } from '../schema/index.ts';
import { checkPlace, nextNumber } from './class-places.ts';
import { lockChild } from './own-child.ts';

/**
 * Moves a child to another class of the same teacher, under that class's next number. Everything of the child's own goes along:
 * helpers, slips, evenings, marks, memory, its own workbooks and its own time. The drill of today that is there already stays
 * as it is; from the next evening on plan, workbook and time are the new class's. Each helper is told once. Refused when the
 * other class is full or has a child of this nickname. Returns the act's id.
 */
export async function moveChild(
  store: Store,
  scope: TeacherScope,
  { number, toClassId, now }: { number: number; toClassId: string; now: Date },
): Promise<string> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, { ...scope, classId: toClassId });
    if (toClassId === scope.classId) throw new AppError('not_found', 'class');
    await lockBoth(inner, scope.classId, toClassId);
    const row = await lockChild(inner, scope, { number, archived: false });
    await checkPlace(inner, toClassId, { childId: row.id, nickname: row.nickname });
    const toNumber = await nextNumber(inner, toClassId);
    await seat(inner, { childId: row.id, classId: toClassId, number: toNumber, now });
    const before = { childId: row.id, number, toClassId, toNumber };
    return keepAct(inner, scope, { kind: 'childMoved', before, now });
  });
}

/**
 * Moves a child back under the number it had. Who takes it back teaches the class the child is in, too; `conflict` while that one
 * is archived (`archived class`).
 */
export const undoMove: Inverse<'childMoved'> = async (inner, { classId, by, before }, now) => {
  const { childId, number, toClassId } = before;
  await checkTaught(inner, by, toClassId);
  await lockBoth(inner, classId, toClassId);
  const [row] = await inner.db
    .select()
    .from(child)
    .where(and(eq(child.id, childId), eq(child.classId, toClassId)))
    .for('update');
  if (!row || row.archivedAt) throw new AppError('conflict', 'undo');
  await checkPlace(inner, classId, { childId, nickname: row.nickname });
  await seat(inner, { childId, classId, number, now });
};

async function checkTaught(inner: Store, teacherId: string, classId: string): Promise<void> {
  const [row] = await inner.db
    .select({ archivedAt: schoolClass.archivedAt })
    .from(schoolClass)
    .innerJoin(classTeacher, eq(classTeacher.classId, schoolClass.id))
    .where(and(eq(schoolClass.id, classId), eq(classTeacher.teacherId, teacherId)));
  if (!row) throw new AppError('not_found', 'class');
  if (row.archivedAt) throw new AppError('conflict', 'archived class');
}

/** Always in the same order, so that two moves in opposite directions wait for each other and never both. */
async function lockBoth(inner: Store, one: string, other: string): Promise<void> {
  for (const classId of [one, other].sort()) await lockClass(inner, classId);
}

/** Evenings and slips follow by the schema's own cascade; what is due tonight by the other class's time is not made up for. */
async function seat(
  inner: Store,
  {
    childId,
    classId,
    number,
    now,
  }: { childId: string; classId: string; number: number; now: Date },
): Promise<void> {
  await inner.db
    .update(child)
    .set({ classId, number, timeSince: now })
    .where(eq(child.id, childId));
  await inner.db.update(book).set({ classId }).where(eq(book.childId, childId));
  await announceAnew(inner, { childId, classId, now });
  await oweMoved(inner, { childId, classId, now });
}

/** Fewer evenings that were announced to the one class's teachers are announced to the other's before anything changes. */
async function announceAnew(
  inner: Store,
  { childId, classId, now }: { childId: string; classId: string; now: Date },
): Promise<void> {
  const [to] = await inner.db
    .select({ zone: schoolClass.zone })
    .from(schoolClass)
    .where(eq(schoolClass.id, classId));
  const { day } = localTimeAt(now, to?.zone ?? 'UTC');
  await changePace(inner, { childId, day, now, isWord: false }, (pace) =>
    pace.announced === null ? pace : { ...pace, announced: null },
  );
}
