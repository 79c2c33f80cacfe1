import { addDays, type SchoolDay } from '../calendar/school-day.ts';
import { judgeSecurity, type Level } from '../digest/judge-security.ts';
import { factsAskedOn } from '../digest/rung-memory.ts';
import type { Tally } from '../digest/summary.ts';
import { tallyOf } from '../digest/tally.ts';
import { HISTORY_DAYS, type PartScore } from '../digest/week.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { RungId, Strand } from '../ladder/rung.ts';
import { rungsOf } from '../ladder/rungs.ts';
import type { MemoryModel } from '../memory/model.ts';
import type { ChildPast, PastDay } from './child-past.ts';
import { leastSure } from './facts-to-practise.ts';
import { mondayOf } from './weeks.ts';

/** As many facts as one sentence holds. */
const MOST_MEETING = 4;
/** A fact that is right less often than this is one the child is still meeting (our choice, no source). */
const MET = 0.75;

/** One step of a strand with what can be said of the child on it today. */
export interface StepReport {
  readonly rung: RungId;
  readonly level: Level;
}

/**
 * One strand of a child's report: its tally in the span, the same by week (null for a week without marks), its steps from easy
 * to hard, and up to four facts the child is still meeting, the least sure first.
 */
export interface StrandReport extends Tally {
  readonly strand: Strand;
  readonly weeks: readonly (Tally | null)[];
  readonly steps: readonly StepReport[];
  readonly meeting: readonly FactId[];
}

/** Reports on a strand from the evenings marked; null when it was not practised. A step is judged by its marks of four weeks. */
export function reportStrand(
  strand: Strand,
  marked: readonly PastDay[],
  { memory, today, weeks }: Pick<ChildPast, 'memory' | 'today'> & { weeks: readonly SchoolDay[] },
  model: MemoryModel,
): StrandReport | null {
  const scores = marked.flatMap(({ day, parts }) =>
    parts.flatMap((part) => (part.strand === strand && part.asked > 0 ? [{ day, part }] : [])),
  );
  if (scores.length === 0) return null;
  const practised = new Set(scores.map(({ part }) => part.rung));
  const rungs = rungsOf(strand).filter(({ id }) => practised.has(id));
  const recent = addDays(today, 1 - HISTORY_DAYS);
  const partsOf = (id: RungId): PartScore[] =>
    scores.flatMap(({ day, part }) => (part.rung === id && day >= recent ? [part] : []));
  const facts = new Set(rungs.flatMap((rung) => factsAskedOn(rung, memory)));
  return {
    strand,
    ...tallyOf(scores.map(({ part }) => part)),
    weeks: weeks.map((week) => weekTally(scores, week)),
    steps: rungs.map((rung) => ({
      rung: rung.id,
      level: judgeSecurity(rung, { memory, parts: partsOf(rung.id) }, today, model).level,
    })),
    meeting: stillMeeting(facts, { memory, today }, model),
  };
}

function weekTally(
  scores: readonly { readonly day: SchoolDay; readonly part: PartScore }[],
  week: SchoolDay,
): Tally | null {
  const own = scores.filter(({ day }) => mondayOf(day) === week);
  return own.length === 0 ? null : tallyOf(own.map(({ part }) => part));
}

function stillMeeting(
  facts: ReadonlySet<FactId>,
  { memory, today }: Pick<ChildPast, 'memory' | 'today'>,
  model: MemoryModel,
): FactId[] {
  const own = new Map([...memory].filter(([fact]) => facts.has(fact)));
  return leastSure(own, today, model)
    .filter(({ chance }) => chance < MET)
    .slice(0, MOST_MEETING)
    .map(({ fact }) => fact);
}
