import type { EveningFacts, FamilyEvening, SeenPart, StoredMark, Violation } from '../facts.ts';

const STORED = 'an acknowledged mark is stored once';
const EFFECT = 'no tap has its effect twice';

/** Every part whose mark a family saw acknowledged is stored, once and as it was tapped; no part was closed twice. */
export function checkMarks(facts: EveningFacts): Violation[] {
  const parts = byChild(facts.parts);
  const marks = byChild(facts.marks);
  const missing = facts.families.flatMap((family) =>
    family.seen.flatMap((seen) => {
      const rows = (parts.get(family.childId) ?? []).filter(({ part }) => part === seen.part);
      const own = (marks.get(family.childId) ?? []).filter(({ part }) => part === seen.part);
      return [...checkPart(family, seen, rows), ...checkCards(family, seen, own)];
    }),
  );
  return [...missing, ...checkEffects(facts)];
}

function checkPart(
  { childId }: FamilyEvening,
  seen: SeenPart,
  rows: readonly { right: number }[],
): Violation[] {
  const stored = rows.map(({ right }) => right).join(', ') || 'nothing';
  if (rows.length === 1 && rows[0]?.right === seen.right) return [];
  const what = `child ${childId}, part ${seen.part}: ${seen.right} right were acknowledged, stored: ${stored}`;
  return [{ invariant: STORED, what }];
}

function checkCards(
  { childId }: FamilyEvening,
  { part, missed }: SeenPart,
  marks: readonly StoredMark[],
): Violation[] {
  if (missed === null) return [];
  const stored = marks.filter(({ right }) => !right).map(({ card }) => card);
  const isSame = [...stored].sort().join() === [...missed].sort().join();
  if (isSame && marks.length > 0) return [];
  const what = `child ${childId}, part ${part}: cards ${missed.join() || 'none'} were missed, stored: ${stored.join() || 'none'} of ${marks.length}`;
  return [{ invariant: STORED, what }];
}

/** A second effect of the same tap would close a part again, as its next revision, or store a card twice. */
function checkEffects({ parts, marks }: EveningFacts): Violation[] {
  const again = [...parts, ...marks].filter(({ revision }) => revision > 1);
  const seen = new Set<string>();
  const doubled = marks.filter(({ childId, part, card, revision }) => {
    const key = `${childId} ${part} ${card} ${revision}`;
    const isKnown = seen.has(key);
    seen.add(key);
    return isKnown;
  });
  return [...again, ...doubled].map(({ childId, part, revision }) => ({
    invariant: EFFECT,
    what: `child ${childId}, part ${part} has revision ${revision}`,
  }));
}

function byChild<T extends { readonly childId: string }>(
  rows: readonly T[],
): ReadonlyMap<string, T[]> {
  const sorted = new Map<string, T[]>();
  for (const row of rows) {
    const own = sorted.get(row.childId);
    if (own) own.push(row);
    else sorted.set(row.childId, [row]);
  }
  return sorted;
}
