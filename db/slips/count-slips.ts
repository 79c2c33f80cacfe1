import { and, count, eq, isNull } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { slip } from '../schema/index.ts';

/** How many slips a class was ever given by its teachers; what families pass on is no part of it. The number only grows: a screen that carries it can tell whether links were made since. */
export async function countSlips(store: Store, scope: TeacherScope): Promise<number> {
  await getClass(store, scope);
  const [row] = await store.db
    .select({ slips: count() })
    .from(slip)
    .where(and(eq(slip.classId, scope.classId), isNull(slip.sharedBy)));
  return row?.slips ?? 0;
}
