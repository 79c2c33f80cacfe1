import { addDays, type SchoolDay } from '../calendar/school-day.ts';
import type { RungId, Strand } from '../ladder/rung.ts';
import { newcombe } from '../statistics/newcombe.ts';
import { practisedEvenings } from './practised-evenings.ts';
import type { Tally } from './summary.ts';
import { tallyOf } from './tally.ts';
import type { ChildWeek, PartScore, WeekInput } from './week.ts';

const DAYS_A_WEEK = 7;
/** The normal deviate that leaves 95 % in the middle. */
const Z_95 = 1.959964;

/**
 * How a strand went beside the week before. `new`: nobody practised it then. `new_step`: no child practised the same step in
 * both weeks, so there is nothing to compare. Otherwise `now` and `before` are the tallies of the children and steps that are
 * in both weeks, and `up` and `down` say that chance alone would hardly bring the difference.
 */
export type StrandChange =
  | { readonly kind: 'new' | 'new_step' }
  | { readonly kind: 'up' | 'same' | 'down'; readonly now: Tally; readonly before: Tally };

/**
 * Compares a strand with the seven days before the week's first school day. Like is compared with like: only a child's scores
 * on a rung which that child has in both weeks count, so that neither a harder step nor another set of children looks like a
 * change. A week without marks is missing, never nought.
 *
 * Up and down need a 95 % interval of the difference that does not hold nought (see `newcombe`). It takes all marks for
 * independent; marks of one child are not quite, so that a change is said a little too often, never withheld. Our choice.
 *
 * @example
 * strandChange(children, 'halves', days); // { kind: 'up', now: { right: 90, asked: 100 }, before: { right: 70, asked: 100 } }
 */
export function strandChange(
  children: readonly ChildWeek[],
  strand: Strand,
  days: WeekInput['days'],
): StrandChange {
  const pairs = children.map((child) => ({
    now: ofStrand(practisedEvenings(child, days), strand),
    before: ofStrand(weekBefore(child, days), strand),
  }));
  if (pairs.every(({ before }) => before.length === 0)) return { kind: 'new' };
  const now = tallyOf(pairs.flatMap((pair) => onRungsOf(pair.now, pair.before)));
  const before = tallyOf(pairs.flatMap((pair) => onRungsOf(pair.before, pair.now)));
  if (now.asked === 0 || before.asked === 0) return { kind: 'new_step' };
  const { lower, upper } = newcombe(now, before, Z_95);
  return { kind: lower > 0 ? 'up' : upper < 0 ? 'down' : 'same', now, before };
}

/** The scores of the seven days that end `back` weeks before the week's first school day. */
function weekBefore({ earlier }: ChildWeek, days: readonly SchoolDay[], back = 0) {
  const first = days.at(0);
  if (!first) return [];
  const until = addDays(first, -DAYS_A_WEEK * back);
  const from = addDays(until, -DAYS_A_WEEK);
  return earlier.filter(({ day }) => day >= from && day < until);
}

/** Weeks that stand beside one another: as far back as a child's own past is read. */
const WEEKS = 4;

/**
 * A strand's tallies over all children in the last four weeks, the oldest first and this one last; null for a week without
 * marks. A week is the seven days before the next one's first.
 *
 * @example
 * strandWeeks([], 'halves', days); // [null, null, null, null]
 */
export function strandWeeks(
  children: readonly ChildWeek[],
  strand: Strand,
  days: WeekInput['days'],
): (Tally | null)[] {
  const earlier = Array.from({ length: WEEKS - 1 }, (_, index) =>
    children.flatMap((child) => weekBefore(child, days, WEEKS - 2 - index)),
  );
  const now = children.flatMap((child) => practisedEvenings(child, days));
  return [...earlier, now].map((evenings) => {
    const parts = ofStrand(evenings, strand);
    return parts.length === 0 ? null : tallyOf(parts);
  });
}

function ofStrand(
  evenings: readonly { readonly parts: readonly PartScore[] }[],
  strand: Strand,
): readonly PartScore[] {
  return evenings.flatMap(({ parts }) =>
    parts.filter((part) => part.strand === strand && part.asked > 0),
  );
}

function onRungsOf(parts: readonly PartScore[], others: readonly PartScore[]): PartScore[] {
  const rungs: ReadonlySet<RungId> = new Set(others.map(({ rung }) => rung));
  return parts.filter(({ rung }) => rungs.has(rung));
}
