import { and, asc, eq, exists, gte, lt, lte, type SQL, sql } from 'drizzle-orm';
import type { EveningStatus, SchoolDay } from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { evening, ledger, partScore } from '../schema/index.ts';

/** How one evening went, seen from today. */
export interface PastEvening {
  readonly eveningId: string;
  readonly childId: string;
  readonly day: SchoolDay;
  /** When the evening was planned, a moment before it was sent. */
  readonly plannedAt: Date;
  readonly status: EveningStatus;
}

/** Of which children and days: the whole class's, or one child's. `before` and `until` are exclusive and inclusive ends. */
export interface HistoryRange {
  readonly classId: string;
  readonly childId?: string;
  readonly from: SchoolDay;
  readonly until?: SchoolDay;
  readonly before?: SchoolDay;
}

/**
 * The evenings of a class in order of day. One part marked is practised; "not today" counts as an answer, and so does "stop for today"; an evening whose
 * message surely or possibly never arrived is `unsent`, so that a family is not called silent for our failure.
 */
export async function listPastEvenings(store: Store, range: HistoryRange): Promise<PastEvening[]> {
  const marked = store.db
    .select({ one: sql`1` })
    .from(partScore)
    .where(eq(partScore.eveningId, evening.id));
  const sent = store.db
    .select({ one: sql`1` })
    .from(ledger)
    .where(and(eq(ledger.eveningId, evening.id), eq(ledger.status, 'sent')));
  const rows = await store.db
    .select({
      eveningId: evening.id,
      childId: evening.childId,
      day: evening.day,
      plannedAt: evening.createdAt,
      declinedAt: evening.declinedAt,
      stoppedAt: evening.stoppedAt,
      marked: isTrue(exists(marked)),
      sent: isTrue(exists(sent)),
    })
    .from(evening)
    .where(
      and(
        eq(evening.classId, range.classId),
        range.childId === undefined ? undefined : eq(evening.childId, range.childId),
        gte(evening.day, range.from),
        range.until === undefined ? undefined : lte(evening.day, range.until),
        range.before === undefined ? undefined : lt(evening.day, range.before),
      ),
    )
    .orderBy(asc(evening.day));
  return rows.map(({ eveningId, childId, day, plannedAt, ...facts }) => ({
    eveningId,
    childId,
    day: storedDay(day),
    plannedAt,
    status: statusOf(facts),
  }));
}

// Columns written straight into a selected expression lose their table's name when the query has one table; wrapped in a
// subquery they keep it.
function isTrue(condition: SQL): SQL<boolean> {
  return sql<boolean>`${condition}`;
}

function statusOf(row: {
  marked: boolean;
  declinedAt: Date | null;
  stoppedAt: Date | null;
  sent: boolean;
}): EveningStatus {
  if (row.marked) return 'practised';
  if (row.declinedAt || row.stoppedAt) return 'not_today';
  return row.sent ? 'silent' : 'unsent';
}
