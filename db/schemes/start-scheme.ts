import { and, eq, isNull } from 'drizzle-orm';
import { checkPlan, type SchoolDay, TERM_WEEKS, type WeekPlan } from '../../drills/index.ts';
import type { ActToUndo } from '../acts/act-kinds.ts';
import { keepAct } from '../acts/keep-act.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { scheme, schemeWeek } from '../schema/index.ts';
import { schemeInUse } from './read-scheme.ts';

/** A term to be put in use. `instead` is the id of the one it takes the place of, null when there is none. */
export interface NewScheme {
  readonly firstDay: SchoolDay;
  readonly weeks: readonly WeekPlan[];
  readonly instead: string | null;
  readonly now: Date;
}

/**
 * Puts a term in use in place of `instead`. Returns the id of the act, which can be taken back for a day. Null, and nothing
 * changed, when another term is in use by now than was thought. Too few or too many weeks (`term weeks`) and a faulty plan
 * (`week plan`) are `invalid`.
 */
export async function startScheme(
  store: Store,
  scope: TeacherScope,
  { firstDay, weeks, instead, now }: NewScheme,
): Promise<string | null> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const { min, max } = TERM_WEEKS;
    if (weeks.length < min || weeks.length > max) throw new AppError('invalid', 'term weeks');
    if (weeks.some((plan) => checkPlan(plan).length > 0))
      throw new AppError('invalid', 'week plan');
    const current = await schemeInUse(inner, scope.classId);
    if ((current?.id ?? null) !== instead) return null;
    if (current) await retire(inner, scope.classId, current.id, now);
    const started = newId(now);
    const { classId } = scope;
    await inner.db
      .insert(scheme)
      .values({ id: started, classId, firstDay, createdAt: now, changedAt: now });
    await inner.db
      .insert(schemeWeek)
      .values(weeks.map((plan, at) => ({ schemeId: started, week: at + 1, plan })));
    return keepAct(inner, scope, { kind: 'termChanged', before: { started, ended: instead }, now });
  });
}

/**
 * Takes the term out of use; the plan in force stays. Returns the id of the act, which can be taken back for a day; null when
 * there was no term.
 */
export async function retireScheme(
  store: Store,
  scope: TeacherScope,
  now: Date,
): Promise<string | null> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const current = await schemeInUse(inner, scope.classId);
    if (!current) return null;
    await retire(inner, scope.classId, current.id, now);
    const before = { started: null, ended: current.id };
    return keepAct(inner, scope, { kind: 'termChanged', before, now });
  });
}

/** Brings back the term before, or none. `conflict` when the terms have changed again since. */
export async function undoTermChange(
  inner: Store,
  { classId, before: { started, ended } }: ActToUndo<'termChanged'>,
  now: Date,
): Promise<void> {
  await lockClass(inner, classId);
  const current = await schemeInUse(inner, classId);
  if ((current?.id ?? null) !== started) throw new AppError('conflict', 'term');
  if (started) await retire(inner, classId, started, now);
  if (!ended) return;
  await inner.db
    .update(scheme)
    .set({ retiredAt: null, changedAt: now })
    .where(and(eq(scheme.id, ended), eq(scheme.classId, classId)));
}

/** Moves the beginning of the term: all its weeks come earlier or later. False when it began on another day than `from`. */
export async function moveScheme(
  store: Store,
  scope: TeacherScope,
  { from, to, now }: { from: SchoolDay; to: SchoolDay; now: Date },
): Promise<boolean> {
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    await lockClass(inner, scope.classId);
    const current = await schemeInUse(inner, scope.classId);
    if (!current) throw new AppError('not_found', 'term');
    if (current.firstDay !== from) return false;
    await inner.db
      .update(scheme)
      .set({ firstDay: to, changedAt: now })
      .where(eq(scheme.id, current.id));
    return true;
  });
}

async function retire(inner: Store, classId: string, id: string, now: Date): Promise<void> {
  await inner.db
    .update(scheme)
    .set({ retiredAt: now })
    .where(and(eq(scheme.id, id), eq(scheme.classId, classId), isNull(scheme.retiredAt)));
}
