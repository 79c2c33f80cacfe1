import { and, eq } from 'drizzle-orm';
import type { WeekPlan } from '../../drills/index.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { type PLAN_SOURCES, weekPlan } from '../schema/index.ts';
import { storedPlan } from './plan-json.ts';

/** Where a week plan comes from: its teacher, the digest's proposals, or the term's scheme. */
export type PlanSource = (typeof PLAN_SOURCES)[number];

/** A plan with the id that evenings keep, so that each can be traced to what it was made from. */
export interface StoredPlan {
  readonly id: string;
  readonly plan: WeekPlan;
  readonly source: PlanSource;
}

/** The plan in force and the teacher's draft; null where there is none. */
export interface ClassPlans {
  readonly active: StoredPlan | null;
  readonly draft: StoredPlan | null;
}

/** Both plans of a class, for its teacher. */
export async function getPlans(store: Store, scope: TeacherScope): Promise<ClassPlans> {
  await getClass(store, scope);
  return {
    active: await planOf(store, scope.classId, 'active'),
    draft: await planOf(store, scope.classId, 'draft'),
  };
}

/** A plan in force and since when. */
export interface ActivePlan extends StoredPlan {
  readonly since: Date;
  /** Whether a teacher put a draft in use: that was kept before. What the planner puts in force is made in that moment. */
  readonly fromDraft: boolean;
}

/** The plan in force, for the planner. */
export async function getActivePlan(store: Store, classId: string): Promise<ActivePlan | null> {
  const [row] = await store.db
    .select({
      id: weekPlan.id,
      plan: weekPlan.plan,
      source: weekPlan.source,
      since: weekPlan.activatedAt,
      createdAt: weekPlan.createdAt,
    })
    .from(weekPlan)
    .where(and(eq(weekPlan.classId, classId), eq(weekPlan.status, 'active')));
  if (!row?.since) return null;
  const { createdAt, since, ...stored } = row;
  return { ...stored, plan: storedPlan(row.plan), since, fromDraft: createdAt < since };
}

/**
 * Keeps the teacher's draft. An empty plan may be kept, but not activated. `source` is where it comes from: the teacher, unless
 * said otherwise.
 */
export async function saveDraftPlan(
  store: Store,
  scope: TeacherScope,
  input: { plan: WeekPlan; source?: PlanSource; now: Date },
): Promise<void> {
  await inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const { source = 'teacher' } = input;
    const changed = await inner.db
      .update(weekPlan)
      .set({ plan: input.plan, source })
      .where(and(eq(weekPlan.classId, scope.classId), eq(weekPlan.status, 'draft')))
      .returning({ id: weekPlan.id });
    if (changed.length > 0) return;
    await inner.db.insert(weekPlan).values({
      id: newId(input.now),
      classId: scope.classId,
      status: 'draft',
      plan: input.plan,
      source,
      createdAt: input.now,
    });
  });
}

/** The plan of a class in a state; at most one is active and at most one a draft. */
export async function planOf(
  store: Store,
  classId: string,
  status: 'active' | 'draft',
): Promise<StoredPlan | null> {
  const [row] = await store.db
    .select({ id: weekPlan.id, plan: weekPlan.plan, source: weekPlan.source })
    .from(weekPlan)
    .where(and(eq(weekPlan.classId, classId), eq(weekPlan.status, status)));
  return row ? { ...row, plan: storedPlan(row.plan) } : null;
}
