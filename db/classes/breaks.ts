import { and, asc, eq, gte, inArray, type SQL } from 'drizzle-orm';
import type { Break, SchoolDay } from '../../drills/index.ts';
import type { ActToUndo } from '../acts/act-kinds.ts';
import { keepAct } from '../acts/keep-act.ts';
import { localTimeAt } from '../calendar/zone.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { classBreak, schoolClass } from '../schema/index.ts';
import { isTitle } from './check-class.ts';
import { MOST_BREAKS_AT_ONCE } from './class-limits.ts';
import { getClass, type TeacherScope } from './get-class.ts';
import { lockClass } from './lock-class.ts';
import { lookAgain } from './look-again.ts';
import { storedDay } from './school-class.ts';

/** A break with its title and id. */
export interface ClassBreak extends Break {
  readonly id: string;
  readonly title: string;
}

/** A break to be added. */
export interface NewBreak {
  readonly break: Break;
  readonly title: string;
}

/** What was added, and the act that takes it back; null when every one of them was there already. */
export interface AddedBreaks {
  readonly added: readonly ClassBreak[];
  readonly actId: string | null;
}

/**
 * Adds breaks, all or none: nothing is sent to families on their days, from now on. One that is there already, by its days and
 * its title, is not added again. A title over 60 characters (`break title`), a last day before the first (`break order`) and
 * more than 40 at once (`number of breaks`) are `invalid`.
 */
export async function addBreaks(
  store: Store,
  scope: TeacherScope,
  { breaks, now }: { breaks: readonly NewBreak[]; now: Date },
): Promise<AddedBreaks> {
  if (breaks.length > MOST_BREAKS_AT_ONCE) throw new AppError('invalid', 'number of breaks');
  for (const each of breaks) check(each);
  return inTransaction(store, async (inner) => {
    await lockClass(inner, scope.classId);
    await getClass(inner, scope);
    const present = new Set((await breaksOf(inner, scope.classId)).map(keyOf));
    const added = breaks
      .map(({ break: { first, last }, title }) => ({ first, last, title, id: newId(now) }))
      .filter((each) => !present.has(keyOf(each)));
    if (added.length === 0) return { added, actId: null };
    await inner.db.insert(classBreak).values(
      added.map(({ id, first, last, title }) => ({
        id,
        classId: scope.classId,
        firstDay: first,
        lastDay: last,
        title,
        createdAt: now,
      })),
    );
    const before = { breakIds: added.map(({ id }) => id) };
    return { added, actId: await keepAct(inner, scope, { kind: 'breaksAdded', before, now }) };
  });
}

/** Adds one break as {@link addBreaks} does, or finds the one that is there already. */
export async function addBreak(
  store: Store,
  scope: TeacherScope,
  { now, ...wanted }: NewBreak & { now: Date },
): Promise<ClassBreak & { actId: string | null }> {
  const { added, actId } = await addBreaks(store, scope, { breaks: [wanted], now });
  const [made] = added;
  if (made) return { ...made, actId };
  const key = keyOf({ ...wanted.break, title: wanted.title });
  const found = (await breaksOf(store, scope.classId)).find((each) => keyOf(each) === key);
  if (!found) throw new AppError('not_found', 'break');
  return { ...found, actId: null };
}

/** Takes back the adding of breaks; those that are gone by now stay gone. */
export async function undoBreaks(
  inner: Store,
  { classId, before }: ActToUndo<'breaksAdded'>,
  now: Date,
): Promise<void> {
  const gone = await remove(inner, classId, before.breakIds, now);
  if (gone.length === 0) throw new AppError('conflict', 'undo');
}

/**
 * Removes a break of this class; `not_found` for any other. When it frees today, what is over of today stays over. Returns the
 * id of the act, which can be taken back for a day.
 */
export async function removeBreak(
  store: Store,
  scope: TeacherScope,
  input: { breakId: string; now: Date },
): Promise<string> {
  const { now } = input;
  return inTransaction(store, async (inner) => {
    await getClass(inner, scope);
    const [removed] = await remove(inner, scope.classId, [input.breakId], now);
    if (!removed) throw new AppError('not_found', 'break');
    return keepAct(inner, scope, { kind: 'breakRemoved', before: removed, now });
  });
}

/** Puts a removed break back; one that was typed in again meanwhile is a `conflict`. */
export async function undoBreakRemoval(
  inner: Store,
  { classId, before: { first, last, title } }: ActToUndo<'breakRemoved'>,
  now: Date,
): Promise<void> {
  await lockClass(inner, classId);
  const present = new Set((await breaksOf(inner, classId)).map(keyOf));
  if (present.has(keyOf({ first, last, title }))) throw new AppError('conflict', 'undo');
  const days = { firstDay: first, lastDay: last };
  await inner.db
    .insert(classBreak)
    .values({ id: newId(now), classId, ...days, title, createdAt: now });
}

async function remove(inner: Store, classId: string, ids: readonly string[], now: Date) {
  await lookAgain(inner, eq(schoolClass.id, classId));
  const removed = await inner.db
    .delete(classBreak)
    .where(and(inArray(classBreak.id, [...ids]), eq(classBreak.classId, classId)))
    .returning({ first: classBreak.firstDay, last: classBreak.lastDay, title: classBreak.title });
  const [row] = await inner.db
    .select({ zone: schoolClass.zone })
    .from(schoolClass)
    .where(eq(schoolClass.id, classId));
  const { day } = localTimeAt(now, row?.zone ?? 'UTC');
  if (removed.some(({ first, last }) => first <= day && day <= last)) {
    await inner.db.update(schoolClass).set({ timesSince: now }).where(eq(schoolClass.id, classId));
  }
  return removed;
}

function check({ break: { first, last }, title }: NewBreak): void {
  if (!isTitle(title)) throw new AppError('invalid', 'break title');
  if (first > last) throw new AppError('invalid', 'break order');
}

function keyOf({ first, last, title }: { first: string; last: string; title: string }): string {
  return `${first} ${last} ${title}`;
}

/** A class's breaks that end on `from` or later, in order. For the planners and, after a scope check, for the teacher. */
export async function listBreaks(
  store: Store,
  classId: string,
  from: SchoolDay,
): Promise<ClassBreak[]> {
  return breaksOf(store, classId, gte(classBreak.lastDay, from));
}

async function breaksOf(store: Store, classId: string, which?: SQL): Promise<ClassBreak[]> {
  const rows = await store.db
    .select()
    .from(classBreak)
    .where(and(eq(classBreak.classId, classId), which))
    .orderBy(asc(classBreak.firstDay), asc(classBreak.id));
  return rows.map((row) => ({
    id: row.id,
    title: row.title,
    first: storedDay(row.firstDay),
    last: storedDay(row.lastDay),
  }));
}
