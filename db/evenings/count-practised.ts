import { and, countDistinct, eq, gte } from 'drizzle-orm';
import { type SchoolDay, termStart } from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import { listBreaks } from '../classes/breaks.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { type FamilyScope, readTie } from '../helpers/relation.ts';
import { evening, partScore } from '../schema/index.ts';

/** How many evenings a child practised, since the term began (`since`), or ever where no long break parts the terms. */
export interface Practised {
  readonly evenings: number;
  readonly since: SchoolDay | null;
}

/** No break is older than any class. */
const EARLIEST = storedDay('2000-01-01');

/**
 * Counts the evenings of a child with at least one part marked. The count only grows within a term: an evening left out takes
 * nothing away. A child the helper does not sit beside now is `not_found`.
 */
export async function countPractised(
  store: Store,
  { now, ...scope }: FamilyScope & { now: Date },
): Promise<Practised> {
  const { schoolClass } = await readTie(store, scope);
  const { day } = localTimeAt(now, schoolClass.zone);
  const since = termStart(day, await listBreaks(store, schoolClass.id, EARLIEST));
  const [row] = await store.db
    .select({ evenings: countDistinct(evening.day) })
    .from(evening)
    .innerJoin(partScore, eq(partScore.eveningId, evening.id))
    .where(
      and(eq(evening.childId, scope.childId), since === null ? undefined : gte(evening.day, since)),
    );
  return { evenings: row?.evenings ?? 0, since };
}
