import { and, eq } from 'drizzle-orm';
import {
  askedOf,
  blueprintOf,
  type DrillPart,
  type FactPart,
  type Mark,
  type RunPart,
  runSteps,
  scoreFromMissed,
} from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { refreshMemory } from '../memory/refresh-memory.ts';
import { evening, mark, marking, partScore, runResult } from '../schema/index.ts';
import type { EveningView } from './evening-view.ts';

/** One part of an evening as it is being stored: by whom, when, and as which revision. */
export interface PartEntry {
  readonly view: EveningView;
  readonly index: number;
  readonly revision: number;
  readonly helperId: string;
  readonly now: Date;
}

/** How cards were seen: each by itself, or by tapping the missed ones alone. */
export type Seen = Exclude<Mark['way'], 'run'>;

/** The entry for a part that is stored now: the first time, or as a correction of what is there. */
export function entryOf(
  view: EveningView,
  index: number,
  by: { helperId: string; now: Date },
): PartEntry {
  return { view, index, revision: (view.results[index]?.revision ?? 0) + 1, ...by };
}

/**
 * How a part's cards were seen the last time they were stored. A correction keeps it: whoever puts one card right has seen
 * the others no differently. Null while the part is not marked, and once its single marks were deleted.
 */
export async function lastSeen(store: Store, { view, index }: PartEntry): Promise<Seen | null> {
  const revision = view.results[index]?.revision;
  if (revision === undefined) return null;
  const [row] = await store.db
    .select({ way: mark.way })
    .from(mark)
    .where(and(eq(mark.eveningId, view.id), eq(mark.part, index), eq(mark.revision, revision)))
    .limit(1);
  if (!row) return null;
  return row.way === 'card' ? 'card' : 'unmissed';
}

/** Stores a mark for each card, the score, and what follows. */
export async function storeCards(
  store: Store,
  entry: PartEntry,
  part: FactPart,
  { missed, seen }: { missed: readonly number[]; seen: Seen },
): Promise<void> {
  await store.db.insert(mark).values(
    part.cards.map((fact, card) => ({
      id: newId(entry.now),
      eveningId: entry.view.id,
      childId: entry.view.childId,
      part: entry.index,
      card,
      fact,
      right: !missed.includes(card),
      way: seen,
      revision: entry.revision,
      helperId: entry.helperId,
      markedAt: entry.now,
    })),
  );
  await finish(store, entry, part, scoreFromMissed(part.cards.length, missed));
}

/** Stores how far a counting run got, the score, and what follows. */
export async function storeRun(
  store: Store,
  entry: PartEntry,
  part: RunPart,
  said: number,
): Promise<void> {
  await store.db.insert(runResult).values({
    id: newId(entry.now),
    eveningId: entry.view.id,
    childId: entry.view.childId,
    part: entry.index,
    rung: part.rung,
    start: part.start,
    step: part.step,
    length: part.length,
    said,
    revision: entry.revision,
    helperId: entry.helperId,
    markedAt: entry.now,
  });
  await finish(store, entry, part, said);
}

async function finish(
  store: Store,
  entry: PartEntry,
  part: DrillPart,
  right: number,
): Promise<void> {
  const { view, now } = entry;
  const { db } = store;
  await storeScore(store, entry, part, right);
  await db.delete(marking).where(eq(marking.eveningId, view.id));
  // Who marks a part is practising after all; who puts one right that was marked before is not.
  const goesOn = view.results[entry.index] ? {} : { stoppedAt: null };
  await db
    .update(evening)
    .set({ startedAt: now, declinedAt: null, ...goesOn })
    .where(eq(evening.id, view.id));
  await refreshMemory(store, view.childId, part.kind === 'facts' ? part.cards : runSteps(part));
}

async function storeScore(
  { db }: Store,
  entry: PartEntry,
  part: DrillPart,
  right: number,
): Promise<void> {
  const score = {
    right,
    asked: askedOf(part),
    revision: entry.revision,
    markedAt: entry.now,
  };
  await db
    .insert(partScore)
    .values({
      ...score,
      eveningId: entry.view.id,
      part: entry.index,
      childId: entry.view.childId,
      strand: part.strand,
      rung: part.rung,
      blueprint: blueprintOf(part),
    })
    .onConflictDoUpdate({ target: [partScore.eveningId, partScore.part], set: score });
}
