import { and, eq } from 'drizzle-orm';
import { checkPlan, samePlan, type WeekPlan } from '../../drills/index.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { type ActivePlan, getActivePlan } from '../plans/week-plans.ts';
import { weekPlan } from '../schema/index.ts';
import { type Scheme, schemeInUse } from './read-scheme.ts';

/**
 * Which week of which term is due. It began at `begins`; a plan that its teacher put in use after `chosenAfter`, the last
 * evening of the week before, was chosen for it.
 */
export interface WeekDue {
  readonly classId: string;
  readonly schemeId: string;
  readonly week: number;
  readonly begins: Date;
  readonly chosenAfter: Date;
  readonly now: Date;
}

/**
 * Puts the plan of a term's week in force, for the planner; false when there is nothing to do. It is in force already, the
 * teacher chose another one for this week, the term is over or was exchanged, or this release cannot send the week's plan.
 *
 * A new week's plan counts from the beginning of the week, or from when the term was last changed, so that a service that was
 * down over that moment still sends tonight's evening by it. What changes within a week counts from now on. However often and
 * from wherever it is called at once, one plan is put in force.
 */
export async function useSchemeWeek(store: Store, due: WeekDue): Promise<boolean> {
  // Nearly every look finds nothing to do: that one locks nothing.
  if (!(await toUse(store, due))) return false;
  return inTransaction(store, async (inner) => {
    await lockClass(inner, due.classId);
    const found = await toUse(inner, due);
    if (!found) return false;
    const { scheme, plan, active } = found;
    const from = new Date(Math.max(due.begins.getTime(), scheme.changedAt.getTime()));
    const activatedAt = active && active.since >= from ? due.now : from;
    if (active) {
      await inner.db
        .update(weekPlan)
        .set({ status: 'past' })
        .where(and(eq(weekPlan.id, active.id), eq(weekPlan.status, 'active')));
    }
    await inner.db.insert(weekPlan).values({
      id: newId(due.now),
      classId: due.classId,
      status: 'active',
      source: 'scheme',
      plan,
      createdAt: due.now,
      activatedAt,
    });
    return true;
  });
}

/** The plan to put in force in place of `active`, and the term it is of; null when there is nothing to do. */
async function toUse(
  store: Store,
  due: WeekDue,
): Promise<{ scheme: Scheme; plan: WeekPlan; active: ActivePlan | null } | null> {
  const scheme = await schemeInUse(store, due.classId);
  const plan = scheme?.id === due.schemeId ? scheme.weeks[due.week - 1] : undefined;
  if (!scheme || !plan || checkPlan(plan).length > 0) return null;
  const active = await getActivePlan(store, due.classId);
  if (active && (isChosen(active, scheme, due) || isInForce(active, plan))) return null;
  return { scheme, plan, active };
}

/**
 * A plan that was there before the term was made is nobody's choice against it. One taken from the term into the draft and used
 * in another week is a choice until the term is changed.
 */
function isChosen(active: ActivePlan, scheme: Scheme, due: WeekDue): boolean {
  const { source, since, fromDraft } = active;
  const isFromTerm = source === 'scheme' && !(fromDraft && since > scheme.changedAt);
  return !isFromTerm && since > due.chosenAfter && since > scheme.createdAt;
}

function isInForce(active: ActivePlan, plan: WeekPlan): boolean {
  return active.source === 'scheme' && samePlan(active.plan, plan);
}
