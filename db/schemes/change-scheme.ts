import { eq } from 'drizzle-orm';
import { checkPlan, TERM_WEEKS, type WeekPlan } from '../../drills/index.ts';
import type { ActToUndo } from '../acts/act-kinds.ts';
import { keepAct } from '../acts/keep-act.ts';
import { getClass, type TeacherScope } from '../classes/get-class.ts';
import { lockClass } from '../classes/lock-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { scheme, schemeWeek } from '../schema/index.ts';
import { type Scheme, schemeInUse } from './read-scheme.ts';

/** Which week, from 1, and of how many: a button that was made when there were more or fewer does nothing. */
export interface WeekWanted {
  readonly week: number;
  readonly of: number;
  readonly now: Date;
}

/** Gives a week of the term another plan. A week that is not there is `not_found`, a faulty plan `invalid`. */
export async function saveSchemeWeek(
  store: Store,
  scope: TeacherScope,
  { week, plan, now }: { week: number; plan: WeekPlan; now: Date },
): Promise<void> {
  if (checkPlan(plan).length > 0) throw new AppError('invalid', 'week plan');
  await inTransaction(store, async (inner) => {
    const { weeks } = await toChange(inner, scope, week);
    await writeWeeks(inner, scope, weeks.with(week - 1, plan), now);
  });
}

/**
 * Has a week of the term come twice: what follows comes a week later. False, and nothing changed, when the term has another
 * number of weeks by now; `invalid` (`term weeks`) when it is as long as it may be.
 */
export async function repeatSchemeWeek(
  store: Store,
  scope: TeacherScope,
  { week, of, now }: WeekWanted,
): Promise<boolean> {
  return inTransaction(store, async (inner) => {
    const { weeks } = await toChange(inner, scope, week, of);
    const plan = weeks[week - 1];
    if (weeks.length !== of || !plan) return false;
    if (of >= TERM_WEEKS.max) throw new AppError('invalid', 'term weeks');
    await writeWeeks(inner, scope, weeks.toSpliced(week, 0, plan), now);
    return true;
  });
}

/**
 * Takes a week out of the term: what follows comes a week earlier. Returns the id of the act, which can be taken back for a day;
 * null, and nothing changed, when the term has another number of weeks by now. The only week is `invalid` (`only week`).
 */
export async function removeSchemeWeek(
  store: Store,
  scope: TeacherScope,
  { week, of, now }: WeekWanted,
): Promise<string | null> {
  return inTransaction(store, async (inner) => {
    const { id, weeks } = await toChange(inner, scope, week, of);
    const plan = weeks[week - 1];
    if (weeks.length !== of || !plan) return null;
    if (of <= TERM_WEEKS.min) throw new AppError('invalid', 'only week');
    await writeWeeks(inner, scope, weeks.toSpliced(week - 1, 1), now);
    const before = { schemeId: id, week, plan };
    return keepAct(inner, scope, { kind: 'termWeekRemoved', before, now });
  });
}

/** Puts a week back where it was, or at the end of a term that has become shorter; `conflict` when the term is over or full. */
export async function undoWeekRemoval(
  inner: Store,
  { classId, by, before }: ActToUndo<'termWeekRemoved'>,
  now: Date,
): Promise<void> {
  await lockClass(inner, classId);
  const found = await schemeInUse(inner, classId);
  if (found?.id !== before.schemeId) throw new AppError('conflict', 'term');
  if (found.weeks.length >= TERM_WEEKS.max) throw new AppError('conflict', 'term weeks');
  const weeks = found.weeks.toSpliced(before.week - 1, 0, before.plan);
  await writeWeeks(inner, { classId, teacherId: by }, weeks, now);
}

/** The term in use, kept from changing. With `of`, a week that is not there any more is for the caller to pass over. */
async function toChange(
  inner: Store,
  scope: TeacherScope,
  week: number,
  of?: number,
): Promise<Scheme> {
  await getClass(inner, scope);
  await lockClass(inner, scope.classId);
  const found = await schemeInUse(inner, scope.classId);
  if (!found) throw new AppError('not_found', 'term');
  if (of === undefined && !found.weeks[week - 1]) throw new AppError('not_found', 'term week');
  return found;
}

/** Writes all weeks anew: their numbers are a key, so they cannot be moved up one by one. */
async function writeWeeks(
  inner: Store,
  { classId }: TeacherScope,
  weeks: readonly WeekPlan[],
  now: Date,
): Promise<void> {
  const found = await schemeInUse(inner, classId);
  if (!found) throw new AppError('not_found', 'term');
  await inner.db.delete(schemeWeek).where(eq(schemeWeek.schemeId, found.id));
  await inner.db
    .insert(schemeWeek)
    .values(weeks.map((plan, at) => ({ schemeId: found.id, week: at + 1, plan })));
  await inner.db.update(scheme).set({ changedAt: now }).where(eq(scheme.id, found.id));
}
