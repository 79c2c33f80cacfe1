import { and, eq, inArray, lt, max, ne } from 'drizzle-orm';
import { isGreetingDue, type SchoolDay } from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { oweRecipients, reachableHelpers } from '../ledger/owe.ts';
import { ledger } from '../schema/index.ts';
import { greetingOf } from './greeting.ts';

/** An evening waits so long for its greeting at most: then it comes without. */
const WAIT_MS = 30 * 60_000;

/** The evening that a greeting goes before. */
export interface GreetingOccasion {
  readonly childId: string;
  readonly classId: string;
  readonly day: SchoolDay;
  readonly expiresAt: Date;
  readonly now: Date;
}

/**
 * Owes the class's greeting to each helper of a child that is to get it with this evening; the ledger's unique key makes it one
 * a helper and day, however many children the helper has in the class. Inside the transaction that plans the evening.
 *
 * `waiting` are the helpers whose greeting, owed just now or for another child, has not ended: their evening follows it.
 */
export async function oweGreeting(
  inner: Store,
  occasion: GreetingOccasion,
): Promise<{ owed: number; waiting: ReadonlySet<string> }> {
  const { classId, day, now } = occasion;
  const greeting = await greetingOf(inner, classId);
  if (!greeting) return { owed: 0, waiting: new Set() };
  const helpers = await reachableHelpers(inner, occasion.childId);
  const got = await lastGot(inner, occasion, helpers);
  const due = helpers.filter(({ id }) => isGreetingDue(greeting, day, got.get(id) ?? null));
  const expiresAt = new Date(Math.min(occasion.expiresAt.getTime(), now.getTime() + WAIT_MS));
  const owed = await oweRecipients(
    inner,
    {
      ...{ kind: 'greeting', subjectId: classId, classId, day, eveningId: null },
      ...{ notBefore: now, expiresAt },
    },
    { kind: 'helper', ids: due.map(({ id }) => id) },
    now,
  );
  return { owed, waiting: await lockWaiting(inner, occasion, helpers) };
}

/** The latest day before on which each helper got a greeting of this class, or may have. */
async function lastGot(
  { db }: Store,
  { classId, day }: GreetingOccasion,
  helpers: readonly { id: string }[],
): Promise<Map<string, SchoolDay>> {
  if (helpers.length === 0) return new Map();
  const rows = await db
    .select({ id: ledger.recipientId, day: max(ledger.day) })
    .from(ledger)
    .where(
      and(
        eq(ledger.subjectId, classId),
        eq(ledger.kind, 'greeting'),
        inArray(
          ledger.recipientId,
          helpers.map(({ id }) => id),
        ),
        lt(ledger.day, day),
        ne(ledger.status, 'failed'),
      ),
    )
    .groupBy(ledger.recipientId);
  return new Map(rows.flatMap((row) => (row.day ? [[row.id, storedDay(row.day)]] : [])));
}

/** Locked, so that a greeting cannot end unseen while the evening that follows it is being written. */
async function lockWaiting(
  { db }: Store,
  { classId, day }: GreetingOccasion,
  helpers: readonly { id: string }[],
): Promise<ReadonlySet<string>> {
  if (helpers.length === 0) return new Set();
  const rows = await db
    .select({ id: ledger.recipientId })
    .from(ledger)
    .where(
      and(
        eq(ledger.subjectId, classId),
        eq(ledger.kind, 'greeting'),
        eq(ledger.day, day),
        inArray(
          ledger.recipientId,
          helpers.map(({ id }) => id),
        ),
        inArray(ledger.status, ['planned', 'attempting']),
      ),
    )
    .orderBy(ledger.id)
    .for('update');
  return new Set(rows.map(({ id }) => id));
}
