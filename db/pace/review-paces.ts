import { and, eq, isNull, lt, or } from 'drizzle-orm';
import {
  addDays,
  type FamilyPace,
  REVIEW_DAYS,
  reviewPace,
  type SchoolDay,
} from '../../drills/index.ts';
import { instantAt } from '../calendar/zone.ts';
import { childrenOfClass } from '../children/list-children.ts';
import { CLASS_LIMITS } from '../classes/class-limits.ts';
import { type SchoolClass, storedTime } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { listPastEvenings } from '../evenings/history.ts';
import { oweTeachers } from '../ledger/owe.ts';
import { ledger, schoolClass } from '../schema/index.ts';
import { changePace } from './change-pace.ts';
import { classPaces } from './read-pace.ts';

/** A day on which the families' paces of a class are looked at. */
export interface PaceReview {
  readonly schoolClass: SchoolClass;
  readonly day: SchoolDay;
  readonly now: Date;
}

/**
 * Looks at how often the drill comes to each family of a class, once a day however often it is called, and owes the teachers
 * one message when fewer evenings are announced for anybody: in the afternoon, at once when that is over. Returns how many
 * messages are owed.
 */
export async function reviewPaces(store: Store, review: PaceReview): Promise<number> {
  return inTransaction(store, async (inner) => {
    if (!(await claimDay(inner, review))) return 0;
    const announced = await reviewChildren(inner, review);
    return announced ? tellTeachers(inner, review) : 0;
  });
}

/** Locks the class, and has the day's review happen once. */
async function claimDay(inner: Store, { schoolClass: { id }, day }: PaceReview): Promise<boolean> {
  const isNew = or(isNull(schoolClass.paceDay), lt(schoolClass.paceDay, day));
  const claimed = await inner.db
    .update(schoolClass)
    .set({ paceDay: day })
    .where(and(eq(schoolClass.id, id), isNew))
    .returning({ id: schoolClass.id });
  return claimed.length > 0;
}

/** Whether fewer evenings were announced for anybody today. */
async function reviewChildren(inner: Store, review: PaceReview): Promise<boolean> {
  const { schoolClass: of, day, now } = review;
  const children = (await childrenOfClass(inner, of.id)).filter(({ helpers }) => helpers > 0);
  const paceOf = await classPaces(inner, { classId: of.id });
  const from = addDays(day, -REVIEW_DAYS);
  const past = await listPastEvenings(inner, { classId: of.id, from, until: day });
  let announced = false;
  for (const { id: childId } of children) {
    const { pace } = paceOf(childId);
    const look = {
      today: day,
      evenings: past.filter((each) => each.childId === childId),
      weekdays: of.weekdays,
      told: await isTold(inner, of.id, pace),
    };
    if (reviewPace(pace, look) === pace) continue;
    const change = { childId, day, now, isWord: false };
    // Looked at again under the lock: the family may have said something meanwhile.
    const after = await changePace(inner, change, (stored) => reviewPace(stored, look));
    announced ||= after.announced?.on === day;
  }
  return announced;
}

/** Whether a teacher was told of what is announced, or none could be. */
async function isTold({ db }: Store, classId: string, { announced }: FamilyPace): Promise<boolean> {
  if (announced === null) return false;
  const rows = await db
    .select({ status: ledger.status })
    .from(ledger)
    .where(
      and(
        eq(ledger.subjectId, classId),
        eq(ledger.day, announced.on),
        eq(ledger.kind, 'fewer_evenings'),
      ),
    );
  return rows.length === 0 || rows.some(({ status }) => status === 'sent' || status === 'unknown');
}

/** After lessons, and before the families' evenings. Common practice, no source. */
const TELL_AT = '15:00';

async function tellTeachers(inner: Store, review: PaceReview): Promise<number> {
  const { schoolClass: of, day, now } = review;
  const afternoon = instantAt(day, storedTime(TELL_AT), of.zone);
  const quiet = instantAt(day, storedTime(CLASS_LIMITS.quietFrom), of.zone);
  const owed = { subjectId: of.id, classId: of.id, day, eveningId: null };
  const notBefore = new Date(Math.max(afternoon.getTime(), now.getTime()));
  return oweTeachers(inner, { kind: 'fewer_evenings', ...owed, notBefore, expiresAt: quiet }, now);
}
