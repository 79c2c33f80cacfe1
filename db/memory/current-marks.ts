import { and, asc, eq, inArray } from 'drizzle-orm';
import { type FactId, type Mark, runEvidence } from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { storedFact } from '../evenings/drill-json.ts';
import { evening, mark, partScore, runResult } from '../schema/index.ts';
import { COUNTS, RUN_COUNTS } from './counts.ts';
import { storedWay } from './memory-row.ts';

/** A mark with the part it was given in, by which marks and runs of an evening are put in order. */
type Placed = Mark & { readonly part: number };

/**
 * A child's marks that count and what the runs that count say of their steps, in one order: by evening's day, part and card.
 * Corrected ones are left out. Only of the facts named, when given.
 */
export async function currentMarks(
  store: Store,
  childId: string,
  facts?: readonly FactId[],
): Promise<Mark[]> {
  if (facts && facts.length === 0) return [];
  const cards = await markedCards(store, childId, facts);
  const steps = await countedSteps(store, childId, facts);
  // A part has cards or is a run, and sorting leaves equals as they are: the order within a part stays.
  return [...cards, ...steps]
    .sort((one, other) => compare(one.day, other.day) || one.part - other.part)
    .map(({ fact, day, right, way }) => ({ fact, day, right, way }));
}

async function markedCards(
  store: Store,
  childId: string,
  facts: readonly FactId[] | undefined,
): Promise<Placed[]> {
  const rows = await store.db
    .select({
      fact: mark.fact,
      day: evening.day,
      part: mark.part,
      right: mark.right,
      way: mark.way,
    })
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
    part: row.part,
    right: row.right,
    way: storedWay(row.way),
  }));
}

async function countedSteps(
  store: Store,
  childId: string,
  facts: readonly FactId[] | undefined,
): Promise<Placed[]> {
  const wanted = facts ? new Set(facts) : null;
  if (facts && !facts.some((fact) => fact.startsWith('next:'))) return [];
  const rows = await store.db
    .select({
      day: evening.day,
      part: runResult.part,
      start: runResult.start,
      step: runResult.step,
      length: runResult.length,
      said: runResult.said,
    })
    .from(runResult)
    .innerJoin(evening, eq(evening.id, runResult.eveningId))
    .innerJoin(partScore, RUN_COUNTS)
    .where(eq(runResult.childId, childId));
  return rows.flatMap(({ day, part, ...run }) =>
    runEvidence(run)
      .filter(({ fact }) => wanted === null || wanted.has(fact))
      .map((step) => ({ ...step, day: storedDay(day), part, way: 'run' as const })),
  );
}

function compare(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
