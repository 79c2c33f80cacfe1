import { and, eq } from 'drizzle-orm';
import type { FactPart } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { marking } from '../schema/index.ts';
import type { EveningView } from './evening-view.ts';
import type { HelperScope } from './get-evening.ts';
import { changeEvening } from './lock-evening.ts';
import { entryOf, storeCards } from './store-part.ts';

/*
 * One card at a time, without a timer. Every tap names the card that its screen showed, counted from 0:
 *
 *   card c asked      -- show the answer -->  card c, answer to be seen
 *   card c, answered  -- right or not yet -->  card c + 1 asked; after the last card the part is stored
 *   card c            -- back one card -->  card c - 1 asked again
 *
 * A tap that names another card than the one that is asked now is late or comes twice, and changes nothing. What was judged
 * before the last card lies in `marking`, so it outlives a crash and is the same for all helpers of the child.
 */

/** A card as the tapped screen showed it. */
export interface CardAsked {
  readonly part: number;
  readonly card: number;
  readonly now: Date;
}

/** Has the answer of the card that is asked now be seen; of the first card, this begins the part. */
export async function showAnswer(
  store: Store,
  scope: HelperScope,
  { part, card, now }: CardAsked,
): Promise<void> {
  await changeEvening(store, scope, now, async (inner, view) => {
    if (!openCards(view, part)) return;
    if (isAsked(view, part, card)) return setDraft(inner, view, part, { shown: true });
    if (view.marking || card !== 0) return;
    await inner.db
      .insert(marking)
      .values({ eveningId: view.id, part, missed: [], card, shown: true });
  });
}

/** Says of a card whose answer is to be seen whether it was right. After the last card the part is stored like any other. */
export async function judgeCard(
  store: Store,
  scope: HelperScope,
  { part, card, right, now }: CardAsked & { readonly right: boolean },
): Promise<void> {
  await changeEvening(store, scope, now, async (inner, view) => {
    const asked = openCards(view, part);
    if (!asked || !isAsked(view, part, card) || !view.marking?.single?.shown) return;
    const others = view.marking.missed.filter((each) => each !== card);
    const missed = right ? others : [...others, card].sort((a, b) => a - b);
    if (card + 1 < asked.cards.length) {
      return setDraft(inner, view, part, { missed, card: card + 1, shown: false });
    }
    const entry = entryOf(view, part, { helperId: scope.helperId, now });
    await storeCards(inner, entry, asked, { missed, seen: 'card' });
  });
}

/** Asks the card before this one again. Before the first there is none. */
export async function backOneCard(
  store: Store,
  scope: HelperScope,
  { part, card, now }: CardAsked,
): Promise<void> {
  await changeEvening(store, scope, now, async (inner, view) => {
    if (!openCards(view, part) || !isAsked(view, part, card) || card === 0) return;
    await setDraft(inner, view, part, { card: card - 1, shown: false });
  });
}

/** The cards of a part that is still to be marked; null for any other, and while the evening is put off or stopped. */
function openCards(view: EveningView, part: number): FactPart | null {
  const wanted = view.drill.parts[part];
  if (view.declined || view.stopped || view.results[part]) return null;
  return wanted?.kind === 'facts' ? wanted : null;
}

function isAsked({ marking: draft }: EveningView, part: number, card: number): boolean {
  return draft?.part === part && draft.single?.card === card;
}

async function setDraft(
  { db }: Store,
  view: EveningView,
  part: number,
  change: Partial<Pick<typeof marking.$inferInsert, 'missed' | 'card' | 'shown'>>,
): Promise<void> {
  await db
    .update(marking)
    .set(change)
    .where(and(eq(marking.eveningId, view.id), eq(marking.part, part)));
}
