import { and, eq, ne } from 'drizzle-orm';
import { localTimeAt } from '../calendar/zone.ts';
import type { Store } from '../connection/db.ts';
import { oweRecipients, reachableHelpers, reachableTeachers } from '../ledger/owe.ts';
import { outOfQuietHours } from '../ledger/owe-class-news.ts';
import { type child, ledger } from '../schema/index.ts';

const DAY_MS = 24 * 60 * 60_000;

/**
 * Owes the other helpers of a child and the teachers of its class the word that it is being erased, or is kept after all; in
 * quiet hours it waits for the morning.
 */
export async function oweErasing(
  inner: Store,
  kind: 'erasing' | 'kept_after_all',
  about: { row: typeof child.$inferSelect; zone: string; helperId: string; now: Date },
): Promise<void> {
  const { row, zone, helperId, now } = about;
  await inner.db
    .delete(ledger)
    .where(
      and(eq(ledger.subjectId, row.id), eq(ledger.kind, kind), ne(ledger.status, 'attempting')),
    );
  const notBefore = outOfQuietHours(now, zone);
  const owed = {
    ...{ kind, subjectId: row.id, classId: row.classId, eveningId: null, notBefore },
    day: localTimeAt(now, zone).day,
    expiresAt: new Date(notBefore.getTime() + DAY_MS),
  };
  const others = (await reachableHelpers(inner, row.id)).filter(({ id }) => id !== helperId);
  await oweRecipients(inner, owed, { kind: 'helper', ids: others.map(({ id }) => id) }, now);
  const ids = await reachableTeachers(inner, row.classId);
  await oweRecipients(inner, owed, { kind: 'teacher', ids }, now);
}
