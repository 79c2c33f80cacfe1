import { and, eq, isNull, sql } from 'drizzle-orm';
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
  readonly reminded: boolean;
}

/** Today's evenings of a class that nobody has put off, marked or nudged yet. */
export async function listNudgeCandidates(
  store: Store,
  input: { classId: string; day: SchoolDay },
): Promise<NudgeCandidate[]> {
  const owed = (kind: 'nudge' | 'reminder') =>
    sql<boolean>`exists (select 1 from ${ledger} where ${ledger.eveningId} = ${evening.id} and ${ledger.kind} = ${kind})`;
  const marked = sql<boolean>`exists (select 1 from ${partScore} where ${partScore.eveningId} = ${evening.id})`;
  const rows = await store.db
    .select({
      eveningId: evening.id,
      childId: evening.childId,
      plannedAt: evening.createdAt,
      marked,
      alreadyNudged: owed('nudge'),
      reminded: sql<boolean>`${evening.remindAt} is not null or ${owed('reminder')}`,
    })
    .from(evening)
    .innerJoin(child, eq(child.id, evening.childId))
    .where(
      and(
        eq(evening.classId, input.classId),
        eq(evening.day, input.day),
        isNull(evening.declinedAt),
        isNull(child.archivedAt),
        sql`not ${owed('nudge')}`,
        sql`not ${marked}`,
      ),
    );
  return rows.map((row) => ({ ...row, declined: false }));
}
