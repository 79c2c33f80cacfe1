import { and, eq } from 'drizzle-orm';
import { samePlan, type WeekPlan } from '../../drills/index.ts';
import type { ActToUndo } from '../acts/act-kinds.ts';
import { keepAct } from '../acts/keep-act.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { weekPlan } from '../schema/index.ts';
import { getPlans, type PlanSource, saveDraftPlan } from './week-plans.ts';

/**
 * Puts a whole plan into the draft, to be looked at before it is used. Returns the id of the act, which can be taken back for a
 * day, when another draft had to give way; null otherwise.
 */
export async function loadDraft(
  store: Store,
  scope: TeacherScope,
  { plan, source, now }: { plan: WeekPlan; source: PlanSource; now: Date },
): Promise<string | null> {
  return inTransaction(store, async (inner) => {
    await lockClass(inner, scope.classId);
    const { draft } = await getPlans(inner, scope);
    await saveDraftPlan(inner, scope, { plan, source, now });
    if (!draft || samePlan(draft.plan, plan)) return null;
    const before = { plan: draft.plan, source: draft.source };
    return keepAct(inner, scope, { kind: 'draftReplaced', before, now });
  });
}

/** Gives the teacher the draft back that gave way. */
export async function undoLoading(
  inner: Store,
  { classId, by, before: { plan, source } }: ActToUndo<'draftReplaced'>,
  now: Date,
): Promise<void> {
  await saveDraftPlan(inner, { classId, teacherId: by }, { plan, source, now });
}

/** Drops the draft: the plan in use is shown again. Returns the id of the act, or null when there was no draft. */
export async function dropDraft(
  store: Store,
  scope: TeacherScope,
  now: Date,
): Promise<string | null> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const { draft } = await getPlans(inner, scope);
    if (!draft) return null;
    await inner.db
      .delete(weekPlan)
      .where(and(eq(weekPlan.classId, scope.classId), eq(weekPlan.status, 'draft')));
    const before = { plan: draft.plan, source: draft.source };
    return keepAct(inner, scope, { kind: 'draftReplaced', before, now });
  });
}
