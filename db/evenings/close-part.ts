import type { DrillPart, FactPart } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import type { HelperScope } from './get-evening.ts';
import { changeEvening } from './lock-evening.ts';
import { entryOf, lastSeen, type PartEntry, storeCards, storeRun } from './store-part.ts';

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
    if (view.results[input.part] && !opened) return;
    const entry = entryOf(view, input.part, { helperId: scope.helperId, now: input.now });
    if (part.kind === 'facts') return closeCards(inner, entry, part, input.verdict);
    const said = saidOf(part, input.verdict);
    if (said !== null) await storeRun(inner, entry, part, said);
  });
}

async function closeCards(
  store: Store,
  entry: PartEntry,
  part: FactPart,
  verdict: Verdict,
): Promise<void> {
  if (verdict.kind === 'said') return;
  const { marking } = entry.view;
  const isOpen = marking?.part === entry.index;
  const missed = isOpen ? marking.missed : [];
  if (verdict.kind === 'tapped' && !isOpen) return;
  if (verdict.kind === 'all_right' && missed.length > 0) return;
  // Whoever taps the missed cards alone may have overlooked one.
  const seen = (await lastSeen(store, entry)) ?? 'unmissed';
  await storeCards(store, entry, part, { missed, seen });
}

/** How many numbers of a run were said; null when the verdict does not fit it. */
function saidOf(part: Extract<DrillPart, { kind: 'run' }>, verdict: Verdict): number | null {
  if (verdict.kind === 'all_right') return part.length;
  if (verdict.kind === 'tapped') return null;
  const { said } = verdict;
  return Number.isInteger(said) && said >= 0 && said <= part.length ? said : null;
}
