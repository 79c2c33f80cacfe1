import { and, eq } from 'drizzle-orm';
import { checkPlan, type WeekPlan } from '../../drills/index.ts';
import type { ActToUndo } from '../acts/act-kinds.ts';
import { keepAct } from '../acts/keep-act.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { weekPlan } from '../schema/index.ts';
import { retirePlan } from './retire-plan.ts';
import { planOf } from './week-plans.ts';

/**
 * Puts the draft in force from the next evening that is sent. Without a draft `not_found`; with a faulty one `invalid`. Returns
 * the plan and the id of the act, which can be taken back for a day.
 */
export async function activatePlan(
  store: Store,
  scope: TeacherScope,
  now: Date,
): Promise<{ plan: WeekPlan; actId: string }> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const draft = await planOf(inner, scope.classId, 'draft');
    if (!draft) throw new AppError('not_found', 'draft plan');
    if (checkPlan(draft.plan).length > 0) throw new AppError('invalid', 'week plan');
    const active = await planOf(inner, scope.classId, 'active');
    if (active) await retirePlan(inner, scope.classId, active.id);
    await inner.db
      .update(weekPlan)
      .set({ status: 'active', activatedAt: now })
      .where(eq(weekPlan.id, draft.id));
    const before = { planId: draft.id, madeFrom: active?.id ?? null };
    return {
      plan: draft.plan,
      actId: await keepAct(inner, scope, { kind: 'planUsed', before, now }),
    };
  });
}

/**
 * Takes a plan out of use again: the one before it is in force as if it had never been away, or none is. The plan is the draft
 * again, unless the teacher has begun another since. `conflict` when another plan was put in use since.
 */
export async function undoActivation(
  inner: Store,
  { classId, before: { planId, madeFrom } }: ActToUndo<'planUsed'>,
): Promise<void> {
  await lockClass(inner, classId);
  await retirePlan(inner, classId, planId);
  const own = (id: string) => and(eq(weekPlan.id, id), eq(weekPlan.classId, classId));
  const newer = await planOf(inner, classId, 'draft');
  const status = newer ? ('past' as const) : ('draft' as const);
  await inner.db.update(weekPlan).set({ status, activatedAt: null }).where(own(planId));
  if (madeFrom) await inner.db.update(weekPlan).set({ status: 'active' }).where(own(madeFrom));
}
