import { and, asc, eq, isNull } from 'drizzle-orm';
import type { SchoolDay, WeekPlan } from '../../drills/index.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { storedPlan } from '../plans/plan-json.ts';
import { scheme, schemeWeek } from '../schema/index.ts';

/**
 * A class's term: a plan for each of its weeks, the first one in the week of `firstDay`. Made at `createdAt`, and as it is since
 * `changedAt`.
 */
export interface Scheme {
  readonly id: string;
  readonly firstDay: SchoolDay;
  readonly weeks: readonly WeekPlan[];
  readonly createdAt: Date;
  readonly changedAt: Date;
}

/** The term in use, for the class's teacher; null when there is none. */
export async function getScheme(store: Store, scope: TeacherScope): Promise<Scheme | null> {
  await getClass(store, scope);
  return schemeInUse(store, scope.classId);
}

/** The term in use, for the planner. It is changed under the class's lock only. */
export async function schemeInUse(store: Store, classId: string): Promise<Scheme | null> {
  const [row] = await store.db
    .select()
    .from(scheme)
    .where(and(eq(scheme.classId, classId), isNull(scheme.retiredAt)));
  if (!row) return null;
  const weeks = await store.db
    .select({ plan: schemeWeek.plan })
    .from(schemeWeek)
    .where(eq(schemeWeek.schemeId, row.id))
    .orderBy(asc(schemeWeek.week));
  return {
    id: row.id,
    firstDay: storedDay(row.firstDay),
    weeks: weeks.map(({ plan }) => storedPlan(plan)),
    createdAt: row.createdAt,
    changedAt: row.changedAt,
  };
}
