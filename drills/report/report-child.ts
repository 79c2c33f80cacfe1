import type { SchoolDay } from '../calendar/school-day.ts';
import { nextRung } from '../digest/next-rung.ts';
import type { FactId } from '../facts/fact-id.ts';
import { type RungId, STRANDS } from '../ladder/rung.ts';
import { rungById, rungsOf } from '../ladder/rungs.ts';
import { MEMORY_MODEL } from '../memory/default-model.ts';
import type { MemoryModel } from '../memory/model.ts';
import type { ChildPast } from './child-past.ts';
import { factsToPractise } from './facts-to-practise.ts';
import { reportStrand, type StrandReport } from './report-strand.ts';
import { weekStarts } from './weeks.ts';

/** Steps to go on with; more are no longer small (our choice, no source). */
const MOST_STEPS = 2;

/**
 * A child's own past in numbers. `practised` of `schoolDays` had marks; `first` and `last` are the days it covers, null without
 * any. `weeks` are the Mondays under which each strand's tallies stand, at most twelve, the newest last. `pages` is null when
 * nobody said. `practise` are facts to say aloud together, `goOn` the steps to take next.
 */
export interface ChildReport {
  readonly first: SchoolDay | null;
  readonly last: SchoolDay | null;
  readonly schoolDays: number;
  readonly practised: number;
  readonly weeks: readonly SchoolDay[];
  readonly strands: readonly StrandReport[];
  readonly pages: number | null;
  readonly practise: readonly FactId[];
  readonly goOn: readonly RungId[];
}

/**
 * Reports on one child, against its own past and nobody else's. Missing is missing: an evening without marks is a school day
 * that was not practised, and adds nothing to any tally. A day outside the calendar counts when it was practised all the same.
 *
 * @example
 * reportChild({ days: [], evenings: [], memory: new Map(), today }).practised; // 0
 */
export function reportChild(past: ChildPast, model: MemoryModel = MEMORY_MODEL): ChildReport {
  const marked = past.evenings.filter(({ status }) => status === 'practised');
  const days = [...new Set([...past.days, ...marked.map(({ day }) => day)])].sort();
  const weeks = weekStarts(days);
  const said = past.evenings.flatMap(({ pages }) => (pages === null ? [] : [pages]));
  const strands = STRANDS.flatMap(
    (strand) => reportStrand(strand, marked, { ...past, weeks }, model) ?? [],
  );
  return {
    first: days.at(0) ?? null,
    last: days.at(-1) ?? null,
    schoolDays: days.length,
    practised: new Set(marked.map(({ day }) => day)).size,
    weeks,
    strands,
    pages: said.length === 0 ? null : said.reduce((total, pages) => total + pages, 0),
    practise: factsToPractise(past.memory, past.today, model),
    goOn: strands.flatMap(stepOn).slice(0, MOST_STEPS),
  };
}

/** The step after the hardest one practised, if the child is sure of that. */
function stepOn({ strand, steps }: StrandReport): RungId[] {
  const hardest = steps.at(-1);
  const from = hardest?.level === 'secure' ? rungById(hardest.rung) : null;
  const practised = new Set(steps.map(({ rung }) => rung));
  const next = from && nextRung(from, rungsOf(strand), practised);
  return next ? [next] : [];
}
