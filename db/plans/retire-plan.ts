import { and, eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { weekPlan } from '../schema/index.ts';

/** Takes a plan out of force, under the class's lock; `conflict` when it is not in force. */
export async function retirePlan(inner: Store, classId: string, planId: string): Promise<void> {
  const retired = await inner.db
    .update(weekPlan)
    .set({ status: 'past' })
    .where(
      and(eq(weekPlan.id, planId), eq(weekPlan.classId, classId), eq(weekPlan.status, 'active')),
    )
    .returning({ id: weekPlan.id });
  if (retired.length === 0) throw new AppError('conflict', 'week plan');
}
