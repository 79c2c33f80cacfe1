import { and, asc, eq, isNull } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { slip } from '../schema/index.ts';

/**
 * The ids of the children that were given a slip after the class had been given `after` slips. Slips of the same instant count
 * as later ones: a child is sooner left out than given two. Empty when there are no later slips.
 */
export async function childrenGivenSlips(
  store: Store,
  scope: TeacherScope,
  after: number,
): Promise<ReadonlySet<string>> {
  await getClass(store, scope);
  const given = await store.db
    .select({ childId: slip.childId, createdAt: slip.createdAt })
    .from(slip)
    .where(and(eq(slip.classId, scope.classId), isNull(slip.sharedBy)))
    .orderBy(asc(slip.createdAt));
  const first = given[after];
  if (!first) return new Set();
  return new Set(given.filter((row) => row.createdAt >= first.createdAt).map((row) => row.childId));
}
