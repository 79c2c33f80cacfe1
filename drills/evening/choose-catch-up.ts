import { numberOf, type SchoolDay } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { RungEntry } from '../ladder/rung-table.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel } from '../memory/model.ts';
import { keepTwinsApart } from './keep-twins-apart.ts';
import { hasBeenAsked } from './new-facts.ts';
import type { Random } from './random.ts';

/** What one part of a catch-up evening is filled from. `entries` are the rung's facts (see rungTable). */
export interface CatchUpChoice {
  readonly entries: readonly RungEntry[];
  readonly count: number;
  readonly memory: ReadonlyMap<FactId, FactMemory>;
  readonly today: SchoolDay;
  readonly random: Random;
  readonly model: MemoryModel;
}

/** So many cards at the beginning are ones the child surely knows. Our choice, no source. */
const EASY_START = 3;

/** One card in so many may be a new one with a nought in it. */
const NOUGHT_SHARE = 5;

/**
 * The cards of one part after missed evenings, in the order they are shown; `count` of them, or the whole set when it is
 * smaller. What was missed last time fills at most half of it; the rest was right last time. Of both, the longest unseen
 * come first. Only a set with too little else gives more missed ones, and then new ones, the easier first, those with a nought
 * last beyond a fifth of the part.
 *
 * The part opens with the cards most likely to be right, as far as twins can be kept apart.
 */
export function chooseCatchUp(choice: CatchUpChoice): FactId[] {
  const { entries, count, memory, random } = choice;
  // Drawn from the rung's own order, so that the order in which marks arrived plays no part.
  const drawn = random.shuffle(entries);
  const seen = longestUnseenFirst(drawn, memory);
  const right = seen.filter(({ known }) => known.lastRight);
  const missed = seen.filter(({ known }) => !known.lastRight);
  const fresh = drawn.filter(({ fact }) => !hasBeenAsked(memory.get(fact)));

  const half = Math.floor(count / 2);
  const asked = [...missed.slice(0, half), ...right, ...missed.slice(half)];
  const chosen = [...asked.map(({ entry }) => entry), ...easiestFirst(fresh, count)].slice(
    0,
    count,
  );
  const surest = surestOf(chosen, choice);
  const others = chosen.filter((entry) => !surest.includes(entry));
  const cards = [...surest, ...random.shuffle(others)];
  return keepTwinsApart(
    cards.map(({ fact }) => fact),
    cards.map(({ family }) => family),
  );
}

interface Seen {
  readonly entry: RungEntry;
  readonly known: FactMemory;
}

function longestUnseenFirst(
  entries: readonly RungEntry[],
  memory: ReadonlyMap<FactId, FactMemory>,
): Seen[] {
  const seen = entries.flatMap((entry): Seen[] => {
    const known = memory.get(entry.fact);
    return hasBeenAsked(known) ? [{ entry, known }] : [];
  });
  return seen.sort((one, other) => byLastDay(one.known, other.known));
}

/** The earlier day first, as texts of days sort; of one day the shorter streak, which is the shakier fact. */
function byLastDay(one: FactMemory, other: FactMemory): number {
  const [a, b] = [one.lastDay ?? '', other.lastDay ?? ''];
  if (a === b) return one.streak - other.streak;
  return a < b ? -1 : 1;
}

function easiestFirst(entries: readonly RungEntry[], count: number): RungEntry[] {
  const sorted = entries.toSorted((one, other) => one.difficulty - other.difficulty);
  const late = new Set(
    sorted.filter(({ hasNought }) => hasNought).slice(Math.ceil(count / NOUGHT_SHARE)),
  );
  return [...sorted.filter((entry) => !late.has(entry)), ...late];
}

/** The few that were right last time and are the likeliest to be right today, the surest first. */
function surestOf(
  entries: readonly RungEntry[],
  { memory, today, model }: CatchUpChoice,
): RungEntry[] {
  const day = numberOf(today);
  return entries
    .flatMap((entry) => {
      const known = memory.get(entry.fact);
      return known?.lastRight ? [{ entry, chance: model.recall(known.state, day) }] : [];
    })
    .sort((one, other) => other.chance - one.chance)
    .slice(0, EASY_START)
    .map(({ entry }) => entry);
}
