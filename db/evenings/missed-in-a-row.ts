import { and, desc, eq, exists, lt, sql } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { evening, partScore } from '../schema/index.ts';

/**
 * How many of a child's latest evenings before a day went without a mark, in a row and counted up to `most`. Why plays no
 * part, unlike in listPastEvenings: a child who was ill or whose message never arrived has not practised either.
 */
export async function missedInARow(
  store: Store,
  { childId, before, most }: { childId: string; before: SchoolDay; most: number },
): Promise<number> {
  const marks = store.db
    .select({ one: sql`1` })
    .from(partScore)
    .where(eq(partScore.eveningId, evening.id));
  const latest = await store.db
    .select({ marked: sql<boolean>`${exists(marks)}` })
    .from(evening)
    .where(and(eq(evening.childId, childId), lt(evening.day, before)))
    .orderBy(desc(evening.day))
    .limit(most);
  const lastMarked = latest.findIndex(({ marked }) => marked);
  return lastMarked < 0 ? latest.length : lastMarked;
}
