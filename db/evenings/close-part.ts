import { eq } from 'drizzle-orm';
import {
  askedOf,
  blueprintOf,
  type DrillPart,
  type FactPart,
  type RunPart,
  runSteps,
  scoreFromMissed,
} from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { refreshMemory } from '../memory/refresh-memory.ts';
import { evening, mark, marking, partScore, runResult } from '../schema/index.ts';
import type { EveningView } from './evening-view.ts';
import type { HelperScope } from './get-evening.ts';
import { changeEvening } from './lock-evening.ts';

/** What the helper says of a part: every card right, the cards tapped as missed, or how many numbers of a run were said. */
export type Verdict =
  | { readonly kind: 'all_right' }
  | { readonly kind: 'tapped' }
  | { readonly kind: 'said'; readonly said: number };

/**
 * Stores a part's marks and its score. The first verdict wins: a part that is marked and not reopened is left as it is, so
 * the same tap twice stores one set of marks. A reopened part gets a new revision; the old rows stay. "All right" stores
 * nothing while cards are tapped as missed: it comes from an older screen, and would wipe out what another helper saw.
 */
export async function closePart(
  store: Store,
  scope: HelperScope,
  input: { part: number; verdict: Verdict; now: Date },
): Promise<void> {
  await changeEvening(store, scope, input.now, async (inner, view) => {
    const part = view.drill.parts[input.part];
    if (!part) return;
    const opened = view.marking?.part === input.part;
    const before = view.results[input.part];
    if (before && !opened) return;
    const entry: Entry = {
      view,
      index: input.part,
      revision: (before?.revision ?? 0) + 1,
      helperId: scope.helperId,
      now: input.now,
    };
    const right = await storeVerdict(inner, entry, part, input.verdict);
    if (right === null) return;
    await storeScore(inner, entry, part, right);
    await inner.db.delete(marking).where(eq(marking.eveningId, view.id));
    await inner.db
      .update(evening)
      .set({ startedAt: input.now, declinedAt: null })
      .where(eq(evening.id, view.id));
    await refreshMemory(inner, view.childId, part.kind === 'facts' ? part.cards : runSteps(part));
  });
}

interface Entry {
  readonly view: EveningView;
  readonly index: number;
  readonly revision: number;
  readonly helperId: string;
  readonly now: Date;
}

/** Stores the evidence and returns how many were right; null when the verdict does not fit the part. */
async function storeVerdict(
  store: Store,
  entry: Entry,
  part: DrillPart,
  verdict: Verdict,
): Promise<number | null> {
  if (part.kind === 'run') {
    const said =
      verdict.kind === 'all_right' ? part.length : verdict.kind === 'said' ? verdict.said : -1;
    if (!Number.isInteger(said) || said < 0 || said > part.length) return null;
    await storeRun(store, entry, part, said);
    return said;
  }
  if (verdict.kind === 'said') return null;
  const marking = entry.view.marking;
  const isOpen = marking?.part === entry.index;
  const missed = isOpen ? marking.missed : [];
  if (verdict.kind === 'tapped' && !isOpen) return null;
  if (verdict.kind === 'all_right' && missed.length > 0) return null;
  await storeMarks(store, entry, part, missed);
  return scoreFromMissed(part.cards.length, missed);
}

async function storeMarks(
  { db }: Store,
  entry: Entry,
  part: FactPart,
  missed: readonly number[],
): Promise<void> {
  await db.insert(mark).values(
    part.cards.map((fact, card) => ({
      id: newId(entry.now),
      eveningId: entry.view.id,
      childId: entry.view.childId,
      part: entry.index,
      card,
      fact,
      right: !missed.includes(card),
      // Today's marking taps missed cards only; whoever taps none may have overlooked one.
      way: 'unmissed' as const,
      revision: entry.revision,
      helperId: entry.helperId,
      markedAt: entry.now,
    })),
  );
}

async function storeRun({ db }: Store, entry: Entry, part: RunPart, said: number): Promise<void> {
  await db.insert(runResult).values({
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
}

async function storeScore(
  { db }: Store,
  entry: Entry,
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
