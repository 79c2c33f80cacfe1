import { and, eq } from 'drizzle-orm';
import { checkPlan, type WeekPlan } from '../../drills/index.ts';
import type { ActToUndo } from '../acts/act-kinds.ts';
import { keepAct } from '../acts/keep-act.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { weekPlan } from '../schema/index.ts';
import { retirePlan } from './retire-plan.ts';

/**
 * Puts a plan that the digest proposed in force from the next evening that is sent, in place of the one it was made from;
 * `conflict` when another has taken that one's place since, `invalid` for a faulty plan. The teacher's draft stays as it is.
 * Returns the id of the act, which can be taken back for a day.
 */
export async function acceptProposal(
  store: Store,
  scope: TeacherScope,
  { plan, madeFrom, now }: { plan: WeekPlan; madeFrom: string; now: Date },
): Promise<string> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    if (checkPlan(plan).length > 0) throw new AppError('invalid', 'week plan');
    await retirePlan(inner, scope.classId, madeFrom);
    const planId = newId(now);
    await inner.db.insert(weekPlan).values({
      id: planId,
      classId: scope.classId,
      status: 'active',
      source: 'proposal',
      plan,
      createdAt: now,
      activatedAt: now,
    });
    const before = { planId, madeFrom };
    return keepAct(inner, scope, { kind: 'proposalAccepted', before, now });
  });
}

/**
 * Takes an accepted proposal back: the plan before it is in force again, as if it had never been away, and the proposal counts
 * as never in force. `conflict` when another plan was put in use since.
 */
export async function undoProposal(
  inner: Store,
  { classId, before: { planId, madeFrom } }: ActToUndo<'proposalAccepted'>,
): Promise<void> {
  await lockClass(inner, classId);
  await retirePlan(inner, classId, planId);
  const own = (id: string) => and(eq(weekPlan.id, id), eq(weekPlan.classId, classId));
  await inner.db.update(weekPlan).set({ activatedAt: null }).where(own(planId));
  await inner.db.update(weekPlan).set({ status: 'active' }).where(own(madeFrom));
}
