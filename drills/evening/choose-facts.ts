import { daysBetween, type SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import { hasNought } from '../facts/nought.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import { keepTwinsApart } from './keep-twins-apart.ts';
import type { Random } from './random.ts';

/** What one part is filled from. `newLimit` is the most never-seen facts it should bring. */
export interface FactChoice {
  readonly facts: readonly FactId[];
  readonly count: number;
  readonly newLimit: number;
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly today: SchoolDay;
  readonly random: Random;
}

/**
 * The cards of one part, in the order they are shown; `count` of them, or the whole set when it is smaller.
 *
 * Facts missed last time come back first, then a few new ones, and the two together fill at most half of the part,
 * so that a child mostly meets what is known already. The rest is known, the longest unseen first. Only a set with
 * too little that is known goes beyond the half, with new facts before missed ones. Of the new
 * ones, facts with a nought fill at most a fifth of the part while others are to be had: ten cards of 5 + 0 teach nobody.
 */
export function chooseFacts(choice: FactChoice): FactId[] {
  const { count, newLimit, memory, random } = choice;
  // Everything is drawn from the rung's own order, so that the order in which marks arrived plays no part.
  const drawn = random.shuffle(choice.facts);
  const missed = longestUnseenFirst(drawn, false, choice);
  const known = longestUnseenFirst(drawn, true, choice);
  const unseen = noughtsLast(
    drawn.filter((fact) => !memory.has(fact)),
    count,
  );

  const half = Math.floor(count / 2);
  const missedNow = missed.slice(0, half);
  const unseenNow = unseen.slice(0, Math.min(newLimit, half - missedNow.length));
  const wanted = [
    ...missedNow,
    ...unseenNow,
    ...known,
    ...unseen.slice(unseenNow.length),
    ...missed.slice(missedNow.length),
  ];
  return keepTwinsApart(random.shuffle(wanted.slice(0, count)));
}

/** One card in so many may be a new one with a nought in it. */
const NOUGHT_SHARE = 5;

/** The same facts, those with a nought that are too many for a part of `count` cards moved to the end. */
function noughtsLast(facts: readonly FactId[], count: number): FactId[] {
  const late = new Set(facts.filter(hasNought).slice(Math.ceil(count / NOUGHT_SHARE)));
  return [...facts.filter((fact) => !late.has(fact)), ...late];
}

function longestUnseenFirst(
  facts: readonly FactId[],
  lastRight: boolean,
  { memory, today }: FactChoice,
): FactId[] {
  return facts
    .flatMap((fact) => {
      const known = memory.get(fact);
      if (known === undefined || known.lastRight !== lastRight) return [];
      // A mark from a later day can only come from a class that changed its time zone: it counts as seen today.
      return [{ fact, age: Math.max(0, daysBetween(known.lastDay, today)), streak: known.streak }];
    })
    .sort((one, other) => other.age - one.age || one.streak - other.streak)
    .map(({ fact }) => fact);
}
