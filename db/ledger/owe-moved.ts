import { and, eq, ne } from 'drizzle-orm';
import { addDays } from '../../drills/index.ts';
import { instantAt, localTimeAt } from '../calendar/zone.ts';
import { CLASS_LIMITS } from '../classes/class-limits.ts';
import { getRunningClass } from '../classes/get-class.ts';
import { storedTime } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { ledger } from '../schema/index.ts';
import { oweHelpers } from './owe.ts';

const DAY_MS = 24 * 60 * 60_000;

/**
 * Owes each helper of a child the word that it is in another class now, in quiet hours the next morning. Who is still to be
 * told of an earlier move of the day is told once, of where the child is then; who has been told is told again.
 */
export async function oweMoved(
  inner: Store,
  { childId, classId, now }: { childId: string; classId: string; now: Date },
): Promise<void> {
  const { zone } = await getRunningClass(inner, classId);
  const { day, time } = localTimeAt(now, zone);
  await inner.db
    .delete(ledger)
    .where(
      and(eq(ledger.subjectId, childId), eq(ledger.kind, 'moved'), ne(ledger.status, 'attempting')),
    );
  const isLate = time >= CLASS_LIMITS.quietFrom;
  const morning = instantAt(
    isLate ? addDays(day, 1) : day,
    storedTime(CLASS_LIMITS.eveningFrom),
    zone,
  );
  const notBefore = isLate || time < CLASS_LIMITS.eveningFrom ? morning : now;
  const expiresAt = new Date(notBefore.getTime() + DAY_MS);
  const owed = { subjectId: childId, classId, day, eveningId: null, notBefore, expiresAt };
  await oweHelpers(inner, { kind: 'moved', ...owed }, now);
}
