import { and, eq, gt, inArray } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { slip } from '../schema/index.ts';

/** Whether any of these children got a slip after `since`: a second tap would kill links that were just handed out. */
export async function wereSlipsIssuedSince(
  store: Store,
  scope: TeacherScope,
  input: { childIds: readonly string[]; since: Date },
): Promise<boolean> {
  await getClass(store, scope);
  const rows = await store.db
    .select({ id: slip.id })
    .from(slip)
    .where(
      and(
        eq(slip.classId, scope.classId),
        inArray(slip.childId, [...input.childIds]),
        gt(slip.createdAt, input.since),
      ),
    )
    .limit(1);
  return rows.length > 0;
}
