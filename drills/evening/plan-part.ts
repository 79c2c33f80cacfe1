import type { FactRung, Rung, RungId, Strand } from '../ladder/rung.ts';
import { rungById } from '../ladder/rungs.ts';

/**
 * One line of a class's week: which rung, how many cards (or numbers in a run), how many seconds for each. With `also` the part
 * is mixed: the cards of all these rungs come shuffled.
 */
export interface PlanPart {
  readonly rung: RungId;
  readonly also?: readonly RungId[];
  readonly cards: number;
  readonly seconds: number;
}

/**
 * The most rungs one part may mix. Ours: with ten cards each of three still has three. That shuffled practice of several kinds of
 * task serves better than one kind after the other is the finding of Rohrer and Taylor, "The shuffling of mathematics problems
 * improves learning", Instructional Science 35, 2007, 481-498 (from memory; their learners were students, not young children).
 */
export const MIXED_RUNGS = 3;

/**
 * Every rung of a part, the first one first.
 *
 * @example
 * rungsInPart({ rung: 'doubles.to10', also: ['halves.to10'] }); // ['doubles.to10', 'halves.to10']
 */
export function rungsInPart({ rung, also = [] }: Pick<PlanPart, 'rung' | 'also'>): RungId[] {
  return [rung, ...also];
}

/**
 * Whether cards of two rungs can stand in one part: both ask for the same kind of task. Sums of every kind mix. Number words are
 * read and written, a clock is looked at: each mixes with its own kind only. A counting run is one task and never mixes.
 *
 * @example
 * canMix('doubles', 'halves'); // true
 * canMix('doubles', 'clock'); // false
 */
export function canMix(one: Strand, other: Strand): boolean {
  return one !== 'counting' && taskOf(one) === taskOf(other);
}

/**
 * A part with one more rung mixed in, the same part when it has that rung already. Cards asked in all stay as they are.
 *
 * Throws RangeError when it cannot be: a rung that does not exist or does not mix, or more than {@link MIXED_RUNGS}.
 *
 * @example
 * mixIn({ rung: 'doubles.to10', cards: 10, seconds: 3 }, 'halves.to10').also; // ['halves.to10']
 */
export function mixIn(part: PlanPart, rung: RungId): PlanPart {
  const rungs = rungsInPart(part);
  if (rungs.includes(rung)) return part;
  const [first, next] = [rungById(part.rung), rungById(rung)];
  if (!first || !next || !canMix(first.strand, next.strand) || rungs.length >= MIXED_RUNGS) {
    throw new RangeError(`${rung} cannot be mixed into ${rungs.join(' and ')}`);
  }
  return { ...part, also: [...(part.also ?? []), rung] };
}

/**
 * A part of these rungs, the first one first. Without a second one it is not mixed.
 *
 * Throws RangeError without any rung.
 *
 * @example
 * partOf(['doubles.to10'], { cards: 10, seconds: 3 }); // { rung: 'doubles.to10', cards: 10, seconds: 3 }
 */
export function partOf(
  rungs: readonly RungId[],
  size: Pick<PlanPart, 'cards' | 'seconds'>,
): PlanPart {
  const [rung, ...also] = rungs;
  if (rung === undefined) throw new RangeError('a part needs a rung');
  const { cards, seconds } = size;
  return also.length > 0 ? { rung, also, cards, seconds } : { rung, cards, seconds };
}

/**
 * The rung of a part that a fact is asked for: the first one that holds it, since rungs overlap; null when none does.
 *
 * @example
 * rungOfFact([doublesTo10, halvesTo10], 'half:8')?.id; // 'halves.to10'
 */
export function rungOfFact(rungs: readonly Rung[], fact: string): FactRung | null {
  for (const rung of rungs) {
    if (rung.kind === 'facts' && rung.facts.some((each) => each === fact)) return rung;
  }
  return null;
}

function taskOf(strand: Strand): string {
  return strand === 'words' || strand === 'clock' || strand === 'counting' ? strand : 'sums';
}
