import { and, asc, eq, gt, inArray, isNull, lte, ne, or, type SQL } from 'drizzle-orm';
import { addDays, type TimeOfDay } from '../../drills/index.ts';
import { instantAt, localTimeAt } from '../calendar/zone.ts';
import type { Store } from '../connection/db.ts';
import { child, schoolClass } from '../schema/index.ts';
import { CLASS_LIMITS } from './class-limits.ts';
import { type SchoolClass, storedTime, toSchoolClass } from './school-class.ts';

/** Before every clock's reading: the planner looks at the class at its next tick. */
export const LOOK_NOW = new Date(0);

/** A class that the planner is to look at. `claim` names this look. */
export interface ClassToLook {
  readonly claim: Date;
  readonly id: string;
}

/** Claims lie in the first hours after {@link LOOK_NOW}: a claimed look is due for as long as nobody has ended it. */
const CLAIMS = 10_000_000;

/**
 * Has the planner look at classes at its next tick, because something of them changed on which tonight depends. Before the
 * change, in the caller's transaction; classes are locked in the order of their ids.
 */
export async function lookAgain(inner: Store, which: SQL | undefined): Promise<void> {
  const rows = await inner.db
    .select({ id: schoolClass.id })
    .from(schoolClass)
    .where(which)
    .orderBy(asc(schoolClass.id))
    .for('no key update');
  if (rows.length === 0) return;
  const ids = rows.map(({ id }) => id);
  await inner.db
    .update(schoolClass)
    .set({ lookAt: LOOK_NOW })
    .where(and(inArray(schoolClass.id, ids), ne(schoolClass.lookAt, LOOK_NOW)));
}

/**
 * The same for a child's class, for what is stored already and took other locks than the class's: in a statement of its own, so that
 * it waits for nobody while it holds something. Should it be lost in a crash, the hourly look makes up for it.
 */
export async function lookSoon(store: Store, childId: string): Promise<void> {
  const own = store.db.select({ id: child.classId }).from(child).where(eq(child.id, childId));
  await store.db
    .update(schoolClass)
    .set({ lookAt: LOOK_NOW })
    .where(and(inArray(schoolClass.id, own), ne(schoolClass.lookAt, LOOK_NOW)));
}

/**
 * The running classes at which the planner is to look now. It costs what is due, not what exists. A class whose last look was
 * by a clock that was ahead of this one is due as well: the clock was wrong.
 */
export async function listClassesToLook(store: Store, now: Date): Promise<{ id: string }[]> {
  return store.db
    .select({ id: schoolClass.id })
    .from(schoolClass)
    .where(
      and(
        isNull(schoolClass.archivedAt),
        or(lte(schoolClass.lookAt, now), gt(schoolClass.lookedAt, now)),
      ),
    )
    .orderBy(asc(schoolClass.id));
}

/**
 * Begins a look: what changes from here on is seen by this look or leads to another one. Null when the class was put away
 * meanwhile. A look that is never ended is due again.
 */
export async function claimLook(store: Store, id: string): Promise<SchoolClassLook | null> {
  const claim = new Date(1 + Math.floor(Math.random() * CLAIMS));
  const [row] = await store.db
    .update(schoolClass)
    .set({ lookAt: claim })
    .where(and(eq(schoolClass.id, id), isNull(schoolClass.archivedAt)))
    .returning();
  return row ? { look: { id, claim }, row } : null;
}

/** A look that was begun, and the class's row as it was then; {@link readLooked} reads it. */
export interface SchoolClassLook {
  readonly look: ClassToLook;
  readonly row: typeof schoolClass.$inferSelect;
}

/** Reads the class of a look. Throws when the row holds what no write of ours allows. */
export function readLooked({ row }: SchoolClassLook): SchoolClass {
  return toSchoolClass(row);
}

/**
 * Ends a look: the next one is at `next`. When something changed meanwhile, or somebody else began a look, that one stands.
 */
export async function endLook(
  store: Store,
  { id, claim }: ClassToLook,
  { next, now }: { next: Date; now: Date },
): Promise<void> {
  await store.db
    .update(schoolClass)
    .set({ lookAt: next, lookedAt: now })
    .where(and(eq(schoolClass.id, id), eq(schoolClass.lookAt, claim)));
}

/** A change that forgot to ask for a look is late by this much at most, and not lost. */
const LATEST_MS = 3_600_000;

const MIDNIGHT = storedTime('00:00');
const MORNING = storedTime(CLASS_LIMITS.eveningFrom);

/**
 * When something of a class may next come due by the clock alone, after `now`: midnight, when a week of the term may begin; the
 * end of the night's quiet hours, when paces are looked at; the evening times of the class and of its families; the nudge and
 * the digest; an hour from now at the latest. Days without school are not passed over: a look then finds nothing, and a break that moves needs no care.
 */
export async function nextLook(
  store: Store,
  { id, zone, eveningTime, nudgeTime, digestTime }: SchoolClass,
  now: Date,
): Promise<Date> {
  const own = await store.db
    .selectDistinct({ time: child.eveningTime })
    .from(child)
    .where(and(eq(child.classId, id), isNull(child.archivedAt)));
  const times: TimeOfDay[] = [MIDNIGHT, MORNING, eveningTime, nudgeTime, digestTime];
  for (const { time } of own) if (time !== null) times.push(storedTime(time));
  const { day } = localTimeAt(now, zone);
  const after = [day, addDays(day, 1)].flatMap((each) =>
    times.map((time) => instantAt(each, time, zone).getTime()),
  );
  const latest = now.getTime() + LATEST_MS;
  return new Date(Math.min(latest, ...after.filter((at) => at > now.getTime())));
}
