import { and, eq, isNotNull, isNull, sql } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { child, evening, ledger, partScore } from '../schema/index.ts';

/** An evening of today and what a nudge is decided on. */
export interface NudgeCandidate {
  readonly eveningId: string;
  readonly childId: string;
  /** When the evening was planned: a nudge keeps its distance from a late evening too. */
  readonly plannedAt: Date;
  readonly marked: boolean;
  readonly declined: boolean;
  readonly alreadyNudged: boolean;
  /** Whether the reminder the family asked for is owed, or will be: one asked for and overtaken by Start never comes. */
  readonly reminded: boolean;
}

/** A class's evenings of `day` with what a nudge is decided on at `now`; decideNudge in drills/ decides it. */
export async function listNudgeCandidates(
  store: Store,
  input: { classId: string; day: SchoolDay; now: Date },
): Promise<NudgeCandidate[]> {
  const owed = (kind: 'nudge' | 'reminder') =>
    sql<boolean>`exists (select 1 from ${ledger} where ${ledger.eveningId} = ${evening.id} and ${ledger.kind} = ${kind})`;
  const now = sql.param(input.now, evening.remindAt);
  return store.db
    .select({
      eveningId: evening.id,
      childId: evening.childId,
      plannedAt: evening.createdAt,
      marked: sql<boolean>`exists (select 1 from ${partScore} where ${partScore.eveningId} = ${evening.id})`,
      declined: sql<boolean>`${isNotNull(evening.declinedAt)}`,
      alreadyNudged: owed('nudge'),
      reminded: sql<boolean>`${owed('reminder')} or (${isNull(evening.startedAt)} and coalesce(${evening.remindAt} > ${now}, false))`,
    })
    .from(evening)
    .innerJoin(child, eq(child.id, evening.childId))
    .where(
      and(eq(evening.classId, input.classId), eq(evening.day, input.day), isNull(child.archivedAt)),
    );
}
