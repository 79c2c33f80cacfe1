import { and, asc, eq, isNull, notExists, sql } from 'drizzle-orm';
import type { Drill, SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { evening, partScore } from '../schema/index.ts';
import { storedDrill } from './drill-json.ts';

/** The drills of a class's evenings of a day that nobody has marked or put off. For drawing, not for showing to anybody. */
export async function listUnmarkedDrills(
  store: Store,
  input: { classId: string; day: SchoolDay },
): Promise<{ eveningId: string; drill: Drill }[]> {
  const marked = store.db
    .select({ one: sql`1` })
    .from(partScore)
    .where(eq(partScore.eveningId, evening.id));
  const rows = await store.db
    .select({ id: evening.id, drill: evening.drill })
    .from(evening)
    .where(
      and(
        eq(evening.classId, input.classId),
        eq(evening.day, input.day),
        isNull(evening.declinedAt),
        isNull(evening.stoppedAt),
        notExists(marked),
      ),
    )
    .orderBy(asc(evening.id));
  return rows.map(({ id, drill }) => ({ eveningId: id, drill: storedDrill(drill) }));
}
