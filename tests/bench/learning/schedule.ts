import {
  type FactId,
  type RungEntry,
  type RungId,
  rungById,
  rungTable,
  type WeekPlan,
} from '../../../drills/index.ts';

/** What a class practises over the term. `plans` follow one another in equal stretches. */
export interface Schedule {
  readonly name: string;
  readonly plans: readonly WeekPlan[];
}

const CARDS = 10;
const SECONDS = 3;

/** Fixed before anything was tuned: one plan for the whole term, as a class keeps it until the teacher changes it. */
export const STEADY: Schedule = {
  name: 'steady',
  plans: [planOf('bonds.to10', 'takeaway.to10', 'clock.quarters')],
};

/** The other plan: a teacher who moves on every four weeks. */
export const STEPPED: Schedule = {
  name: 'stepped',
  plans: [
    planOf('bonds.to10', 'takeaway.within5', 'clock.mixed'),
    planOf('bonds.to10', 'takeaway.to10', 'clock.quarters'),
    planOf('bonds.bridging', 'takeaway.to10', 'doubles.to10'),
  ],
};

/** The plan in force on a school day, counted from 0, of a term of so many. */
export function planOn({ plans }: Schedule, at: number, days: number): WeekPlan {
  const plan = plans[Math.min(plans.length - 1, Math.floor((at * plans.length) / days))];
  if (plan === undefined) throw new RangeError('a schedule needs a plan');
  return plan;
}

/** Every fact of a schedule once, in the order of its plans. A fact's place in this list is its number in the bench. */
export function factsIn({ plans }: Schedule): readonly RungEntry[] {
  const entries = new Map<FactId, RungEntry>();
  for (const { parts } of plans) {
    for (const { rung } of parts) {
      for (const entry of entriesOf(rung)) entries.set(entry.fact, entry);
    }
  }
  return [...entries.values()];
}

/** The facts of a rung that has some. Throws RangeError for any other. */
export function entriesOf(id: RungId): readonly RungEntry[] {
  const rung = rungById(id);
  if (rung?.kind !== 'facts') throw new RangeError(`not a rung of facts: ${id}`);
  return rungTable(rung);
}

function planOf(...rungs: readonly RungId[]): WeekPlan {
  return { parts: rungs.map((rung) => ({ rung, cards: CARDS, seconds: SECONDS })) };
}
