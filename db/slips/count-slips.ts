import { count, eq } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { slip } from '../schema/index.ts';

/** How many slips a class was ever given. The number only grows: a screen that carries it can tell whether links were made since. */
export async function countSlips(store: Store, scope: TeacherScope): Promise<number> {
  await getClass(store, scope);
  const [row] = await store.db
    .select({ slips: count() })
    .from(slip)
    .where(eq(slip.classId, scope.classId));
  return row?.slips ?? 0;
}
