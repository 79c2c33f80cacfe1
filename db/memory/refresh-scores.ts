import { and, eq, inArray, isNull, sql } from 'drizzle-orm';
import { blueprintOf, type DrillPart } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { storedDrill } from '../evenings/drill-json.ts';
import { evening, mark, partScore, runResult } from '../schema/index.ts';

/** What the marks or the run result of one revision say of a part. */
interface Evidence {
  readonly eveningId: string;
  readonly part: number;
  readonly revision: number;
  readonly right: number;
  readonly asked: number;
  readonly markedAt: Date;
}

/**
 * Writes a child's part scores anew: of each part the highest revision of its marks or run results counts, and the stored
 * drill says what the part was. A score without marks goes, but where they were deleted after their school year.
 */
export async function refreshScores(store: Store, childId: string): Promise<void> {
  const evenings = await store.db
    .select({ id: evening.id, drill: evening.drill })
    .from(evening)
    .where(and(eq(evening.childId, childId), isNull(evening.summarisedAt)));
  const drills = new Map(evenings.map(({ id, drill }) => [id, storedDrill(drill)]));
  const scores = (await latestOf(store, childId)).flatMap((each) => {
    const part = drills.get(each.eveningId)?.parts[each.part];
    return part ? [{ ...each, childId, ...kindOf(part) }] : [];
  });
  const ids = [...drills.keys()];
  if (ids.length > 0) await store.db.delete(partScore).where(inArray(partScore.eveningId, ids));
  if (scores.length > 0) await store.db.insert(partScore).values(scores);
}

async function latestOf(store: Store, childId: string): Promise<Evidence[]> {
  const all = [...(await marksOf(store, childId)), ...(await runsOf(store, childId))];
  const inOrder = all.sort((one, other) => one.revision - other.revision);
  return [...new Map(inOrder.map((each) => [`${each.eveningId} ${each.part}`, each])).values()];
}

/** One row for each revision of each part that has cards. */
async function marksOf(store: Store, childId: string): Promise<Evidence[]> {
  return store.db
    .select({
      eveningId: mark.eveningId,
      part: mark.part,
      revision: mark.revision,
      right: sql<number>`(count(*) filter (where ${mark.right}))::int`,
      asked: sql<number>`count(*)::int`,
      markedAt: sql`max(${mark.markedAt})`.mapWith(mark.markedAt),
    })
    .from(mark)
    .where(eq(mark.childId, childId))
    .groupBy(mark.eveningId, mark.part, mark.revision);
}

/** One row for each revision of each counting run. */
async function runsOf(store: Store, childId: string): Promise<Evidence[]> {
  return store.db
    .select({
      eveningId: runResult.eveningId,
      part: runResult.part,
      revision: runResult.revision,
      right: runResult.said,
      asked: runResult.length,
      markedAt: runResult.markedAt,
    })
    .from(runResult)
    .where(eq(runResult.childId, childId));
}

function kindOf(part: DrillPart) {
  return { strand: part.strand, rung: part.rung, blueprint: blueprintOf(part) };
}
