import { and, eq, gt, inArray, lt, lte, or, sql } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { evening, ledger, schoolClass } from '../schema/index.ts';

/** Between the snapshot and `ranUntil` the old bot may have sent what the snapshot knows nothing of. */
export interface Gap {
  readonly madeAt: Date;
  readonly ranUntil: Date;
  readonly now: Date;
}

/**
 * Sees to it that nobody is prompted again after a restore: what was on its way, and what came due while the old bot may still
 * have run, is never sent by the new one. Messages that wait for a later hour, and evenings and digests that come due after the
 * gap, go out as ever. Returns how many messages were called `unknown`: they may have arrived or not.
 */
export async function settleGap(inner: Store, gap: Gap): Promise<number> {
  const { madeAt, ranUntil, now } = gap;
  const hadTime = ranUntil > madeAt;
  const due = and(eq(ledger.status, 'planned'), lte(ledger.notBefore, ranUntil));
  const lost = await inner.db
    .update(ledger)
    .set({ status: 'unknown', problem: 'restored', settledAt: now })
    .where(or(eq(ledger.status, 'attempting'), hadTime ? due : undefined))
    .returning({ id: ledger.id });
  if (hadTime) {
    await promiseNothingBefore(inner, ranUntil);
    await dropReminders(inner, ranUntil);
    await noteNudges(inner, gap);
  }
  return lost.length;
}

/** What a class or family was to expect is counted anew from then on: by this, what came due before is owed to nobody. */
async function promiseNothingBefore({ db }: Store, at: Date): Promise<void> {
  await db.update(schoolClass).set({ timesSince: at }).where(lt(schoolClass.timesSince, at));
  await db.update(schoolClass).set({ digestSince: at }).where(lt(schoolClass.digestSince, at));
}

async function dropReminders({ db }: Store, at: Date): Promise<void> {
  await db.update(evening).set({ remindAt: null }).where(lte(evening.remindAt, at));
}

/** A nudge whose hour came in the gap counts as sent, to whoever had the evening's own message. */
async function noteNudges({ db }: Store, { madeAt, ranUntil, now }: Gap): Promise<void> {
  const nudgeAt = sql`(${ledger.day} + ${schoolClass.nudgeTime}::time) at time zone ${schoolClass.zone}`;
  const instant = (at: Date) => sql`${at.toISOString()}::timestamptz`;
  const owed = await db
    .select({ id: sql<string>`gen_random_uuid()`, row: ledger })
    .from(ledger)
    .innerJoin(schoolClass, eq(schoolClass.id, ledger.classId))
    .where(
      and(
        eq(ledger.kind, 'evening'),
        inArray(ledger.status, ['sent', 'unknown']),
        gt(nudgeAt, instant(madeAt)),
        lte(nudgeAt, instant(ranUntil)),
      ),
    );
  for (const { id, row } of owed) {
    const noted = { id, kind: 'nudge', status: 'unknown', problem: 'restored' } as const;
    await db
      .insert(ledger)
      .values({ ...row, ...noted, messageId: null, tries: 0, attemptedAt: null, settledAt: now })
      .onConflictDoNothing();
  }
}
