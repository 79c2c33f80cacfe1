import { and, eq, isNull, max, ne, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { act, child, schoolClass } from '../schema/index.ts';
import { MAX_CHILDREN } from './class-size.ts';

/**
 * The number the next child of a class gets. A number is never given twice, because it stands on printed slips: not that of an
 * archived child, nor of one that has moved away or was erased. Only the numbers of a list that was taken back before any slip was
 * made are free again.
 */
export async function nextNumber(inner: Store, classId: string): Promise<number> {
  const [present] = await inner.db
    .select({ number: max(child.number) })
    .from(child)
    .where(eq(child.classId, classId));
  const [erased] = await inner.db
    .select({ number: schoolClass.topNumber })
    .from(schoolClass)
    .where(eq(schoolClass.id, classId));
  const left = sql`${act.classId} = ${classId} and ${act.kind} = 'childMoved'`;
  const came = sql`${act.before}->>'toClassId' = ${classId}`;
  const [gone] = await inner.db
    .select({
      left: sql<number>`coalesce(max((${act.before}->>'number')::int) filter (where ${left}), 0)::int`,
      came: sql<number>`coalesce(max((${act.before}->>'toNumber')::int) filter (where ${came}), 0)::int`,
    })
    .from(act)
    .where(sql`(${left}) or ${came}`);
  return Math.max(present?.number ?? 0, gone?.left ?? 0, gone?.came ?? 0, erased?.number ?? 0) + 1;
}

/** Has a class remember its highest number, before rows that say so are deleted. */
export async function keepTopNumber(inner: Store, classId: string): Promise<void> {
  const topNumber = (await nextNumber(inner, classId)) - 1;
  await inner.db.update(schoolClass).set({ topNumber }).where(eq(schoolClass.id, classId));
}

/**
 * Refuses a child that the class has no room for (`number of children` is `invalid`) or whose nickname another child of the
 * class has (`nickname` in it is a `conflict`).
 */
export async function checkPlace(
  inner: Store,
  classId: string,
  wanted: { childId: string; nickname: string },
): Promise<void> {
  const others = await inner.db
    .select({ nickname: child.nickname })
    .from(child)
    .where(and(eq(child.classId, classId), isNull(child.archivedAt), ne(child.id, wanted.childId)));
  if (others.length >= MAX_CHILDREN) throw new AppError('invalid', 'number of children');
  const taken = others.some((row) => row.nickname.toLowerCase() === wanted.nickname.toLowerCase());
  if (taken) throw new AppError('conflict', 'nickname in the class');
}
