import { and, eq, gte, inArray, lte, ne, sql } from 'drizzle-orm';
import { addDays, isPaused, mayPrompt, mondayOf, type SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { oweRecipients, reachableHelpers } from '../ledger/owe.ts';
import { pacesOf } from '../pace/read-pace.ts';
import { evening, helper, ledger } from '../schema/index.ts';

/** A second message about an evening: the nudge, or the reminder a family asked for. */
export interface SecondMessage {
  readonly kind: 'nudge' | 'reminder';
  readonly eveningId: string;
  readonly childId: string;
  readonly classId: string;
  readonly day: SchoolDay;
  readonly expiresAt: Date;
  readonly now: Date;
}

/**
 * Owes the message to each helper; the ledger's unique key makes it one at most. A nudge goes to those alone who may have one
 * more by mayPrompt, counted over all their children, and to nobody once the family has paused. Returns how many are owed.
 */
export async function oweAgain(store: Store, message: SecondMessage): Promise<number> {
  return inTransaction(store, async (inner) => {
    // Locked, so that a mark being stored at this moment is either seen by the planner's next look or waits for us.
    await inner.db
      .select({ id: evening.id })
      .from(evening)
      .where(eq(evening.id, message.eveningId))
      .for('update');
    const { kind, childId: subjectId, classId, day, eveningId, now, expiresAt } = message;
    const owed = { kind, subjectId, classId, day, eveningId, notBefore: now, expiresAt };
    const ids = (await reachableHelpers(inner, subjectId)).map(({ id }) => id);
    const to = kind === 'nudge' ? await whoMay(inner, message, ids) : ids;
    return oweRecipients(inner, owed, { kind: 'helper', ids: to }, now);
  });
}

/** Those of the helpers who may get one more nudge. Locked, so that nudges about two of their children wait for each other. */
async function whoMay(
  inner: Store,
  { childId, day }: SecondMessage,
  ids: readonly string[],
): Promise<string[]> {
  if (ids.length === 0 || isPaused((await pacesOf(inner, [childId]))(childId).pace, day)) return [];
  await inner.db
    .select({ id: helper.id })
    .from(helper)
    .where(inArray(helper.id, [...ids]))
    .orderBy(helper.id)
    .for('no key update');
  const rows = await inner.db
    .select({
      id: ledger.recipientId,
      thisWeek: sql<number>`count(*)::int`,
      today: sql<number>`(count(*) filter (where ${eq(ledger.day, day)}))::int`,
    })
    .from(ledger)
    .where(
      and(
        inArray(ledger.recipientId, [...ids]),
        eq(ledger.kind, 'nudge'),
        // What surely did not arrive prompted nobody.
        ne(ledger.status, 'failed'),
        gte(ledger.day, mondayOf(day)),
        lte(ledger.day, addDays(mondayOf(day), 6)),
      ),
    )
    .groupBy(ledger.recipientId);
  const had = new Map(rows.map((row) => [row.id, row]));
  return ids.filter((id) => mayPrompt(had.get(id) ?? { today: 0, thisWeek: 0 }));
}
