import { getActivePlan, getScheme, type Store, startScheme } from '../../db/index.ts';
import type { RungId, SchoolDay, WeekPlan } from '../../drills/index.ts';
import { aClass, type Classroom } from '../support/people.ts';
import { MONDAY, MORNING } from '../support/term.ts';

/** A plan of one part. */
export const plan = (rung: RungId): WeekPlan => ({ parts: [{ rung, cards: 5, seconds: 3 }] });

/** Four weeks, each with a step of its own. */
export const WEEKS = (['bonds.to10', 'doubles.to10', 'halves.to10', 'clock.half'] as const).map(
  plan,
);

/** A class with a term from Monday on, made on Monday morning. */
export async function aTerm(store: Store, firstDay: SchoolDay = MONDAY, now = MORNING) {
  const classroom = await aClass(store);
  const started = await startScheme(store, classroom.scope, {
    firstDay,
    weeks: WEEKS,
    instead: null,
    now,
  });
  if (started === null) throw new Error('the term was not started');
  const read = () => getScheme(store, classroom.scope);
  return { classroom, scope: classroom.scope, started, read };
}

/** Where the plan in force comes from, and its first step. */
export const inForce = async (store: Store, { schoolClass }: Classroom) => {
  const active = await getActivePlan(store, schoolClass.id);
  return active && [active.source, active.plan.parts[0]?.rung];
};
