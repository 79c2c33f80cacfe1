import { and, asc, eq, inArray } from 'drizzle-orm';
import type { FactId, SchoolDay } from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { storedFact } from '../evenings/drill-json.ts';
import { evening, mark, partScore } from '../schema/index.ts';
import { COUNTS } from './counts.ts';

/** A mark that counts: corrected ones are left out. */
export interface CurrentMark {
  readonly fact: FactId;
  readonly day: SchoolDay;
  readonly right: boolean;
}

/** A child's marks that count, oldest evening first; only of the facts named, when given. */
export async function currentMarks(
  store: Store,
  childId: string,
  facts?: readonly FactId[],
): Promise<CurrentMark[]> {
  if (facts && facts.length === 0) return [];
  const rows = await store.db
    .select({ fact: mark.fact, day: evening.day, right: mark.right })
    .from(mark)
    .innerJoin(evening, eq(evening.id, mark.eveningId))
    .innerJoin(partScore, COUNTS)
    .where(
      facts
        ? and(eq(mark.childId, childId), inArray(mark.fact, [...facts]))
        : eq(mark.childId, childId),
    )
    .orderBy(asc(evening.day), asc(mark.part), asc(mark.card));
  return rows.map((row) => ({
    fact: storedFact(row.fact),
    day: storedDay(row.day),
    right: row.right,
  }));
}
