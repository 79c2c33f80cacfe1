import type { EveningFacts, FamilyEvening, Owed, Prompt, Violation } from '../facts.ts';

const NAME = 'an evening comes exactly once';

/**
 * Every phone of a family that could be reached got its evening exactly once; where the ledger says `unknown`, at most once,
 * and the nudge besides. Nobody got two of a kind. What a phone got is what the service carried out, answered or not.
 */
export function checkOnce(facts: EveningFacts): Violation[] {
  const arrived = arrivals(facts);
  const owed = new Map(facts.owed.map((row) => [keyOf(row.phone, row.childId, row.kind), row]));
  return facts.families.flatMap((family) =>
    family.phones.flatMap((phone) => {
      const got = (kind: Prompt) => arrived.get(`${phone} ${kind}`) ?? [];
      const row = owed.get(keyOf(phone, family.childId, 'evening'));
      return [
        ...twice(phone, 'evening', got('evening')),
        ...twice(phone, 'nudge', got('nudge')),
        ...lost(family, phone, row, [...got('evening'), ...got('nudge')], got('evening').length),
      ];
    }),
  );
}

/** Ids of the messages that reached each phone, by kind. */
function arrivals({ calls }: EveningFacts): ReadonlyMap<string, number[]> {
  const arrived = new Map<string, number[]>();
  for (const { prompt, chatId, messageId } of calls) {
    if (prompt === null || chatId === null || messageId === null) continue;
    const key = `${chatId} ${prompt}`;
    arrived.set(key, [...(arrived.get(key) ?? []), messageId]);
  }
  return arrived;
}

function keyOf(phone: number, childId: string, kind: Prompt): string {
  return `${phone} ${childId} ${kind}`;
}

function twice(phone: number, kind: Prompt, ids: readonly number[]): Violation[] {
  if (ids.length <= 1) return [];
  return [{ invariant: NAME, what: `phone ${phone} got ${ids.length} of kind ${kind}` }];
}

function lost(
  family: FamilyEvening,
  phone: number,
  row: Owed | undefined,
  ids: readonly number[],
  evenings: number,
): Violation[] {
  const say = (what: string) => [{ invariant: NAME, what: `phone ${phone}: ${what}` }];
  if (!row) {
    if (evenings > 0) return say('an evening came that was not owed');
    return family.reachable ? say('no evening is owed') : [];
  }
  if (row.status === 'sent') {
    // A tap on the nudge settles an evening that is unknown, too, when nobody knows which of the two arrived.
    return ids.includes(row.messageId ?? Number.NaN)
      ? []
      : say(
          `stored as sent with message ${row.messageId}, arrived: ${ids.join(', ') || 'nothing'}`,
        );
  }
  if (row.status === 'unknown') return [];
  if (evenings > 0) return say(`it came, and is stored as ${row.status} (${row.problem})`);
  if (!family.reachable) return [];
  // The other phone of the family had said "not today" before this one was served.
  if (row.problem === 'not_wanted' && family.declined && family.phones.length > 1) return [];
  return say(`it did not come, and is stored as ${row.status} (${row.problem})`);
}
