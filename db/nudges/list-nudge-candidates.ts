import { and, eq, isNotNull, isNull, sql } from 'drizzle-orm';
import { isPaused, type SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { classPaces } from '../pace/read-pace.ts';
import { child, evening, ledger, partScore } from '../schema/index.ts';
import { REMINDER_LATE_MS } from './list-due-reminders.ts';

/** An evening of today and what a nudge is decided on. */
export interface NudgeCandidate {
  readonly eveningId: string;
  readonly childId: string;
  /** When the evening's message arrived, or was planned while none has: a nudge keeps its distance from a late one too. */
  readonly reachedAt: Date;
  /** Whether the evening's own message is still to be sent to somebody. */
  readonly waiting: boolean;
  readonly marked: boolean;
  readonly declined: boolean;
  readonly alreadyNudged: boolean;
  /** Whether the reminder the family asked for is owed, or will be: one asked for and overtaken by Start never comes. */
  readonly reminded: boolean;
  /** Whether the family asked for quiet meanwhile. */
  readonly paused: boolean;
  /** The last day on which the family said something about its pace: it was not silent before. */
  readonly heard: SchoolDay | null;
}

/** A class's evenings of `day` with what a nudge is decided on at `now`; decideNudge in drills/ decides it. */
export async function listNudgeCandidates(
  store: Store,
  input: { classId: string; day: SchoolDay; now: Date },
): Promise<NudgeCandidate[]> {
  const owed = (kind: 'nudge' | 'reminder') =>
    sql<boolean>`exists (select 1 from ${ledger} where ${ledger.eveningId} = ${evening.id} and ${ledger.kind} = ${kind})`;
  // The same rule as listDueReminders: until then the reminder comes, a little late perhaps.
  const still = sql.param(new Date(input.now.getTime() - REMINDER_LATE_MS), evening.remindAt);
  const rows = await store.db
    .select({
      eveningId: evening.id,
      childId: evening.childId,
      reachedAt:
        sql`coalesce((select max(${ledger.settledAt}) from ${ledger} where ${ledger.eveningId} = ${evening.id} and ${ledger.kind} = 'evening' and ${ledger.status} = 'sent'), ${evening.createdAt})`.mapWith(
          evening.createdAt,
        ),
      waiting: sql<boolean>`exists (select 1 from ${ledger} where ${ledger.eveningId} = ${evening.id} and ${ledger.kind} = 'evening' and ${ledger.status} in ('planned', 'attempting'))`,
      marked: sql<boolean>`exists (select 1 from ${partScore} where ${partScore.eveningId} = ${evening.id})`,
      declined: sql<boolean>`${isNotNull(evening.declinedAt)} or ${isNotNull(evening.stoppedAt)}`,
      alreadyNudged: owed('nudge'),
      reminded: sql<boolean>`${owed('reminder')} or (${isNull(evening.startedAt)} and coalesce(${evening.remindAt} > ${still}, false))`,
    })
    .from(evening)
    .innerJoin(child, eq(child.id, evening.childId))
    .where(
      and(eq(evening.classId, input.classId), eq(evening.day, input.day), isNull(child.archivedAt)),
    );
  const paceOf = await classPaces(store, { classId: input.classId });
  return rows.map((row) => {
    const { pace } = paceOf(row.childId);
    return { ...row, paused: isPaused(pace, input.day), heard: pace.heard };
  });
}
