import { and, desc, eq, lte, ne } from 'drizzle-orm';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { weekPlan } from '../schema/index.ts';
import { storedPlan } from './plan-json.ts';
import type { StoredPlan } from './week-plans.ts';

/** The plan that was in force at an instant, for the class's teacher; null when there was none yet. */
export async function planInForceAt(
  store: Store,
  scope: TeacherScope,
  at: Date,
): Promise<StoredPlan | null> {
  await getClass(store, scope);
  const [row] = await store.db
    .select({ id: weekPlan.id, plan: weekPlan.plan, source: weekPlan.source })
    .from(weekPlan)
    .where(
      and(
        eq(weekPlan.classId, scope.classId),
        ne(weekPlan.status, 'draft'),
        lte(weekPlan.activatedAt, at),
      ),
    )
    .orderBy(desc(weekPlan.activatedAt), desc(weekPlan.id))
    .limit(1);
  return row ? { ...row, plan: storedPlan(row.plan) } : null;
}
