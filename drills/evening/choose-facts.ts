import { numberOf, type SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { RungEntry } from '../ladder/rung-table.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel } from '../memory/model.ts';
import { bestOf } from './choice-best.ts';
import { encourage } from './choice-encourage.ts';
import { admitNew } from './choice-new.ts';
import { scoreCards } from './choice-scores.ts';
import { keepTwinsApart } from './keep-twins-apart.ts';
import type { Random } from './random.ts';

/**
 * What one part is filled from. `entries` are the rung's facts (see rungTable). `newLimit` is how many facts that the child
 * does not know yet it may bring; it need not be whole.
 */
export interface FactChoice {
  readonly entries: readonly RungEntry[];
  readonly count: number;
  readonly newLimit: number;
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly today: SchoolDay;
  readonly random: Random;
  readonly model: MemoryModel;
}

/**
 * The cards of one part, in the order they are shown; `count` of them, or the whole set when it is smaller.
 *
 * Of the facts asked before and the few new ones let in (see admitNew), those come that the model thinks most worth asking
 * today. Then some give way to surer ones, so that about eight of ten go right (see encourage).
 *
 * While it goes well, half of the part is new and drawn from the whole rung: one new fact to seven known ones is meant for what a
 * child cannot do yet, and a child who can is not kept at the easiest cards. A tenth missed ends that. Near twins are kept apart, and
 * what is left to chance is drawn from `random` in the rung's own order.
 */
export function chooseFacts(choice: FactChoice): FactId[] {
  const { entries, newLimit, memory, today, random, model } = choice;
  const count = Math.min(choice.count, entries.length);
  const scores = scoreCards(entries, memory, numberOf(today), model, random);
  const seen: number[] = [];
  for (let at = 0; at < entries.length; at += 1) if (scores.isNew[at] === 0) seen.push(at);

  const hasNew = newLimit > 0 && seen.length < entries.length;
  const goesWell = hasNew && isGoingWell(choice, seen, count);
  const limit = goesWell ? Math.floor(count / 2) : newLimit;
  const { admitted, spare } = admitNew(entries, scores, seen, {
    ...{ count, limit, random },
    drawn: goesWell,
  });
  const chosen = goesWell
    ? [...admitted, ...encourage(bestOf(seen, scores.worth, count - admitted.length), seen, scores)]
    : encourage(
        bestOf([...seen, ...admitted], scores.worth, count),
        [...seen, ...admitted, ...spare],
        scores,
      );
  const cards = random.shuffle(chosen).flatMap((at) => entries[at] ?? []);
  return keepTwinsApart(
    cards.map(({ fact }) => fact),
    cards.map(({ family }) => family),
  );
}

/** A child has the hang of a rung while at most one in so many of the facts asked was missed when it was asked last. Ours. */
const MISSED_SHARE = 10;

/** Whether a whole part's worth of the rung has been asked, and hardly any of it stands as missed. */
function isGoingWell(
  { entries, memory }: FactChoice,
  seen: readonly number[],
  count: number,
): boolean {
  if (seen.length < count) return false;
  let missed = 0;
  for (const at of seen) {
    const fact = entries[at]?.fact;
    if (fact !== undefined && memory.get(fact)?.lastRight === false) missed += 1;
  }
  return missed * MISSED_SHARE <= seen.length;
}
