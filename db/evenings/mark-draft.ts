import { and, eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { marking } from '../schema/index.ts';
import type { HelperScope } from './get-evening.ts';
import { changeEvening } from './lock-evening.ts';

/**
 * Opens a part for marking: the first time with no card missed, again with the cards missed so far, so that a wrong tap can
 * be put right until the evening closes. Only one part is open at a time.
 */
export async function openMarking(
  store: Store,
  scope: HelperScope,
  input: { part: number; now: Date },
): Promise<void> {
  await changeEvening(store, scope, input.now, async ({ db }, view) => {
    if (view.marking?.part === input.part || !view.drill.parts[input.part]) return;
    const missed = [...(view.results[input.part]?.missed ?? [])];
    await db.delete(marking).where(eq(marking.eveningId, view.id));
    await db.insert(marking).values({ eveningId: view.id, part: input.part, missed });
  });
}

/**
 * Turns one card between right and missed while its part is open; a tap from an older screen changes nothing.
 *
 * With `wasMissed`, what the tapped button showed, the card is turned only if it is still so: the same tap handled twice, as
 * after a crash between the change and the note that it was handled, turns it once.
 */
export async function toggleMissed(
  store: Store,
  scope: HelperScope,
  input: { part: number; card: number; wasMissed?: boolean; now: Date },
): Promise<void> {
  await changeEvening(store, scope, input.now, async ({ db }, view) => {
    const part = view.drill.parts[input.part];
    if (view.marking?.part !== input.part || part?.kind !== 'facts') return;
    if (part.cards[input.card] === undefined) return;
    const before = view.marking.missed;
    const isMissed = before.includes(input.card);
    if (input.wasMissed !== undefined && input.wasMissed !== isMissed) return;
    const missed = isMissed
      ? before.filter((card) => card !== input.card)
      : [...before, input.card].sort((a, b) => a - b);
    await db
      .update(marking)
      .set({ missed })
      .where(and(eq(marking.eveningId, view.id), eq(marking.part, input.part)));
  });
}
