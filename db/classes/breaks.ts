import { and, asc, eq, gte } from 'drizzle-orm';
import type { Break, SchoolDay } from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { classBreak, schoolClass } from '../schema/index.ts';
import { isTitle } from './check-class.ts';
import { getClass, type TeacherScope } from './get-class.ts';
import { storedDay } from './school-class.ts';

/** A break with its title and id. */
export interface ClassBreak extends Break {
  readonly id: string;
  readonly title: string;
}

/**
 * Adds a break: nothing is sent to families on its days, from now on. A title over 60 characters (`break title`) and a last
 * day before the first (`break order`) are `invalid`.
 */
export async function addBreak(
  store: Store,
  scope: TeacherScope,
  input: { break: Break; title: string; now: Date },
): Promise<ClassBreak> {
  await getClass(store, scope);
  if (!isTitle(input.title)) throw new AppError('invalid', 'break title');
  if (input.break.first > input.break.last) throw new AppError('invalid', 'break order');
  const id = newId(input.now);
  await store.db.insert(classBreak).values({
    id,
    classId: scope.classId,
    firstDay: input.break.first,
    lastDay: input.break.last,
    title: input.title,
    createdAt: input.now,
  });
  return { ...input.break, id, title: input.title };
}

/** Removes a break of this class; `not_found` for any other. When it frees today, what is over of today stays over. */
export async function removeBreak(
  store: Store,
  scope: TeacherScope,
  input: { breakId: string; now: Date },
): Promise<void> {
  const { zone } = await getClass(store, scope);
  await inTransaction(store, async ({ db }) => {
    const [removed] = await db
      .delete(classBreak)
      .where(and(eq(classBreak.id, input.breakId), eq(classBreak.classId, scope.classId)))
      .returning({ first: classBreak.firstDay, last: classBreak.lastDay });
    if (!removed) throw new AppError('not_found', 'break');
    const { day } = localTimeAt(input.now, zone);
    if (day < removed.first || day > removed.last) return;
    await db
      .update(schoolClass)
      .set({ timesSince: input.now })
      .where(eq(schoolClass.id, scope.classId));
  });
}

/** A class's breaks that end on `from` or later, in order. For the planners and, after a scope check, for the teacher. */
export async function listBreaks(
  store: Store,
  classId: string,
  from: SchoolDay,
): Promise<ClassBreak[]> {
  const rows = await store.db
    .select()
    .from(classBreak)
    .where(and(eq(classBreak.classId, classId), gte(classBreak.lastDay, from)))
    .orderBy(asc(classBreak.firstDay));
  return rows.map((row) => ({
    id: row.id,
    title: row.title,
    first: storedDay(row.firstDay),
    last: storedDay(row.lastDay),
  }));
}
