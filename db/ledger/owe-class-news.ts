import { and, eq, isNull, ne } from 'drizzle-orm';
import { addDays } from '../../drills/index.ts';
import { instantAt, localTimeAt } from '../calendar/zone.ts';
import { CLASS_LIMITS } from '../classes/class-limits.ts';
import { storedTime } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { isReached } from '../helpers/reachability.ts';
import { child, helper, helperChild, ledger, schoolClass } from '../schema/index.ts';
import { oweRecipients, reachableTeachers } from './owe.ts';

const HOUR_MS = 60 * 60_000;
const DAY_MS = 24 * HOUR_MS;

/** What is said once to everybody of a class: that it stops, or that it goes on after all. */
export type ClassNews = 'class_stopped' | 'class_resumed';

/**
 * Owes every family of a class, and every teacher of it but the one who did it, one plain message. That a class stops is told an
 * hour later, so that a slip of the finger that is taken back worries nobody; in quiet hours both wait for the morning.
 */
export async function oweClassNews(
  inner: Store,
  kind: ClassNews,
  { classId, by, now }: { classId: string; by: string; now: Date },
): Promise<void> {
  const zone = await zoneOf(inner, classId);
  const at = kind === 'class_stopped' ? new Date(now.getTime() + HOUR_MS) : now;
  await inner.db
    .delete(ledger)
    .where(
      and(eq(ledger.subjectId, classId), eq(ledger.kind, kind), ne(ledger.status, 'attempting')),
    );
  const owed = { kind, ...newsOf(classId, outOfQuietHours(at, zone), now, zone) };
  await oweRecipients(inner, owed, { kind: 'helper', ids: await families(inner, classId) }, now);
  const colleagues = (await reachableTeachers(inner, classId)).filter((id) => id !== by);
  await oweRecipients(inner, owed, { kind: 'teacher', ids: colleagues }, now);
}

/** Owes a class's former lead the word that somebody took it over. */
export async function oweHandedOver(
  inner: Store,
  { classId, teacherId, now }: { classId: string; teacherId: string; now: Date },
): Promise<void> {
  const zone = await zoneOf(inner, classId);
  const owed = { kind: 'handed_over' as const, ...newsOf(classId, now, now, zone) };
  await oweRecipients(inner, owed, { kind: 'teacher', ids: [teacherId] }, now);
}

function newsOf(classId: string, notBefore: Date, now: Date, zone: string) {
  const { day } = localTimeAt(now, zone);
  const expiresAt = new Date(notBefore.getTime() + DAY_MS);
  return { subjectId: classId, classId, day, eveningId: null, notBefore, expiresAt };
}

/** The instant itself, or the morning after when it lies in quiet hours. */
export function outOfQuietHours(at: Date, zone: string): Date {
  const { day, time } = localTimeAt(at, zone);
  const morning = storedTime(CLASS_LIMITS.eveningFrom);
  if (time >= CLASS_LIMITS.quietFrom) return instantAt(addDays(day, 1), morning, zone);
  return time < CLASS_LIMITS.eveningFrom ? instantAt(day, morning, zone) : at;
}

async function zoneOf(inner: Store, classId: string): Promise<string> {
  const [row] = await inner.db
    .select({ zone: schoolClass.zone })
    .from(schoolClass)
    .where(eq(schoolClass.id, classId));
  return row?.zone ?? 'UTC';
}

/** The helpers of a class's children whom the chat service reaches, each once. */
async function families(inner: Store, classId: string): Promise<string[]> {
  const rows = await inner.db
    .selectDistinct({ id: helper.id })
    .from(helperChild)
    .innerJoin(helper, eq(helper.id, helperChild.helperId))
    .innerJoin(child, eq(child.id, helperChild.childId))
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .where(
      and(
        eq(child.classId, classId),
        isNull(child.archivedAt),
        isNull(helperChild.leftAt),
        isReached(inner, helper.chatId, schoolClass.botId),
      ),
    )
    .orderBy(helper.id);
  return rows.map(({ id }) => id);
}
