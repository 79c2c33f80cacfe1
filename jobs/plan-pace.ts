import { CLASS_LIMITS, reviewPaces } from '../db/index.ts';
import type { ClassDay } from './class-day.ts';
import type { PlanDeps } from './ports.ts';

/**
 * Looks once a school day, between quiet hours, at how often the drill comes to each family. Runs as often as you like. Returns
 * how many messages are owed to teachers.
 */
export async function planPace(deps: PlanDeps, today: ClassDay): Promise<number> {
  const now = deps.clock.now();
  const { schoolClass, day, time, isSchoolDay, quietAt } = today;
  if (!isSchoolDay || time < CLASS_LIMITS.eveningFrom || now >= quietAt) return 0;
  const owed = await reviewPaces(deps.store, { schoolClass, day, now });
  if (owed > 0) deps.log.info({ classId: schoolClass.id, owed }, 'fewer_evenings_announced');
  return owed;
}
