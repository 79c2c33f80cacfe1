import { followTerm, type SchoolClass } from '../db/index.ts';
import type { PlanDeps } from './ports.ts';

/** Puts the plan of the term's week in force once the week has begun. Runs as often as you like. */
export async function planTerm(deps: PlanDeps, schoolClass: SchoolClass): Promise<void> {
  const week = await followTerm(deps.store, schoolClass, deps.clock.now());
  if (week !== null) deps.log.info({ classId: schoolClass.id, week }, 'term_week_in_use');
}
