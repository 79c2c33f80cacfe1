import { desc, eq, sql } from 'drizzle-orm';
import {
  composeEvening,
  type Drill,
  MISSED_BEFORE_CATCH_UP,
  type RungId,
  type SchoolDay,
  variantAfter,
  type WeekPlan,
} from '../../drills/index.ts';
import { adjustmentOf } from '../adjustments/adjustments.ts';
import type { Store } from '../connection/db.ts';
import { readMemory } from '../memory/read-memory.ts';
import { runResult } from '../schema/index.ts';
import { storedRung } from './drill-json.ts';
import { missedInARow } from './missed-in-a-row.ts';

/** Whose drill, for which day, by which plan. */
export interface DrillWanted {
  readonly childId: string;
  readonly day: SchoolDay;
  readonly plan: WeekPlan;
}

/** The text an evening's chance comes from: the child's and the day's own. */
export function seedOf({ childId, day }: Pick<DrillWanted, 'childId' | 'day'>): string {
  return `${childId} ${day}`;
}

/**
 * The drill a child would get on a day, as things stand; nothing is written. A child whose latest evenings went unmarked gets
 * one to catch up with, and one whose teacher adjusted its evenings gets them so.
 */
export async function previewDrill(store: Store, wanted: DrillWanted): Promise<Drill> {
  const { childId, day, plan } = wanted;
  const missed = await missedInARow(store, { childId, before: day, most: MISSED_BEFORE_CATCH_UP });
  return composeEvening({
    plan,
    memory: await readMemory(store, childId),
    lastStarts: await lastStarts(store, childId),
    today: day,
    seed: seedOf(wanted),
    variant: variantAfter(missed),
    adjustment: await adjustmentOf(store, childId),
  });
}

/** Where each rung's latest counting run started. */
async function lastStarts(store: Store, childId: string): Promise<Map<RungId, number>> {
  const rows = await store.db
    .selectDistinctOn([runResult.rung], { rung: runResult.rung, start: runResult.start })
    .from(runResult)
    .where(eq(runResult.childId, childId))
    .orderBy(runResult.rung, desc(runResult.markedAt), sql`${runResult.id} desc`);
  return new Map(rows.map((row) => [storedRung(row.rung), row.start]));
}
